package rillwright.cli.report.json;

import rillwright.cli.report.units.Shown;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** A solved project for programs. */
public final class SolveJson {
  private final Json json;
  private final SteadyState state;
  private final PartFields parts;
  private final PointFields points;

  private SolveJson(Json json, SteadyState state) {
    this.json = json;
    this.state = state;
    this.parts = new PartFields(json, state.network());
    this.points = new PointFields(json, state.network().water());
  }

  /** The JSON text. */
  public static String of(Solved solved) {
    return Json.object(
        json -> {
          write(json, solved);
          ChangedField.write(json, solved.changes());
        });
  }

  /** The members of a solved project. */
  static void write(Json json, Solved solved) {
    new SolveJson(json, solved.state()).write(solved);
  }

  private void write(Solved solved) {
    json.words("title", solved.title());
    json.truth("converged", true);
    json.whole("iterations", state.iterations());
    json.object(
        "residuals",
        () -> {
          json.number("flowM3PerS", state.flowErrorM3PerS());
          json.number("headM", state.headErrorM());
        });
    json.object(
        "points",
        () -> {
          for (PointState point : state.points()) {
            json.object(point.point().name().value(), () -> points.write(point));
          }
        });
    json.object(
        "lines",
        () -> {
          for (LineState line : state.lines()) {
            json.object(line.line().name().value(), () -> line(line));
          }
        });
    new RunningFields(json).write(solved.takes());
    FindingFields.write(json, solved.findings(), Shown.of(solved));
  }

  private void line(LineState line) {
    json.number("flowM3PerS", line.flowM3PerS());
    json.number("velocityMPerS", line.velocityMPerS());
    json.number("headLossM", line.headLossM());
    json.truth("determined", line.headLossM().isPresent());
    json.truth("open", line.open());
    json.array(
        "parts",
        () -> {
          end("entrance", line.entranceLossM());
          for (PartState part : line.parts()) {
            json.object(() -> parts.write(part, line));
          }
          end("exit", line.exitLossM());
        });
  }

  private void end(String name, double headLossM) {
    json.object(
        () -> {
          json.words("part", name);
          json.number("headLossM", headLossM);
        });
  }
}
