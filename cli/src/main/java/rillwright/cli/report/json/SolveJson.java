package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.SPEED;

import java.util.List;
import java.util.Optional;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.SteadyState;

/**
 * A solved project for programs.
 *
 * @param whole whether it is an answer of its own and no part of another
 */
public record SolveJson(Solved solved, boolean whole) {
  private record Line(SteadyState whole, LineState state) {}

  private static final Shape<Line> LINE =
      Shape.<Line>named("line", "What is so in a line.")
          .number(
              "flowM3PerS",
              FLOW,
              "Flow, positive from its first point to its second.",
              line -> line.state.flowM3PerS())
          .numberOrNull(
              "velocityMPerS",
              SPEED.from(0),
              "Speed in its pipe; null if no bore is known.",
              line -> line.state.velocityMPerS())
          .numberOrNull(
              "headLossM",
              METRES,
              "Head at its first point less head at its second.",
              line -> line.state.headLossM())
          .truth(
              "determined",
              "Whether both heads are; false where headLossM is null.",
              line -> line.state.headLossM().isPresent())
          .truth(
              "open",
              "false if it carries exactly nothing because something in it is closed.",
              line -> line.state.open())
          .list(
              "parts",
              PartJson.VALUE,
              "In order, with the ends of the line where they take head.",
              line -> PartJson.list(line.state, line.whole));

  private static final Shape<SteadyState> RESIDUALS =
      Shape.<SteadyState>of()
          .number(
              "flowM3PerS",
              FLOW.from(0),
              "Largest surplus or lack of flow at any point.",
              SteadyState::flowErrorM3PerS)
          .number("headM", METRES.from(0), "Largest error of any head.", SteadyState::headErrorM);

  static final Shape<SolveJson> SHAPE =
      Estimate.<SolveJson>answer("solve", "What flows where, at what head.")
          .words("title", Meaning.TITLE, it -> it.solved.title())
          .member(
              "converged",
              Value.alwaysTrue(),
              "Always true; a network that does not balance is an error.",
              it -> true)
          .count("iterations", "Newton steps.", it -> it.state().iterations())
          .member("residuals", RESIDUALS, "Recomputed from the laws.", SolveJson::state)
          .each(
              "points",
              PointJson.SHAPE,
              "By name.",
              it -> it.state().points().stream().map(p -> new PointJson(it.state(), p)).toList(),
              point -> point.state().point().name().value())
          .each(
              "lines",
              LINE,
              "By name.",
              it -> it.state().lines().stream().map(l -> new Line(it.state(), l)).toList(),
              line -> line.state.line().name().value())
          .member("running", RunningJson.SHAPE, Meaning.RUNNING, it -> it.solved.takes())
          .list(
              "findings",
              FoundJson.SHAPE,
              Meaning.FINDINGS,
              it -> FoundJson.list(it.solved.findings(), Shown.of(it.solved)))
          .ifAny("changed", Value.list(Value.words()), Meaning.CHANGED, SolveJson::changes);

  /** The JSON text. */
  public static String of(Solved solved) {
    return Json.text(SHAPE, new SolveJson(solved, true));
  }

  private Optional<List<String>> changes() {
    return whole ? Optional.of(solved.changes()) : Optional.empty();
  }

  private SteadyState state() {
    return solved.state();
  }
}
