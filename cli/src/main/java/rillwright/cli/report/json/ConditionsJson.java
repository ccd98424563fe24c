package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.Optional;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.SolvedConditions;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Point;

/** A project in several conditions, for programs. */
public final class ConditionsJson {
  private record Worst(SolvedConditions answer, Point fall) {
    private Case<Solved> worst() {
      return answer.worstFor(fall.name());
    }
  }

  private static final Shape<Worst> WORST =
      Shape.<Worst>of()
          .words("condition", "Its name.", it -> it.worst().condition())
          .numberOrNull(
              "targetM3PerS", FLOW, "The target as written.", it -> it.fall.targetM3PerS())
          .number(
              "targetFraction",
              SHARE,
              "What it gets of it then; 0 without a balance.",
              it -> it.answer.targetFraction(it.fall.name(), it.worst()))
          .truth(
              "met",
              "Whether it gets its target even then.",
              it -> !it.answer.isUnderTarget(it.fall.name(), it.worst()));

  private static final Value<Solved> IN_A_CONDITION =
      SolveJson.SHAPE.of(solved -> new SolveJson(solved, false));

  static final Shape<SolvedConditions> SHAPE =
      Estimate.<SolvedConditions>answer(
              "solveConditions", "A project solved in several conditions.")
          .words("title", Meaning.TITLE, it -> it.solved().title())
          .ifAny(
              "changed",
              Value.list(Value.words()),
              Meaning.CHANGED,
              it -> Optional.of(it.solved().changes()).filter(changes -> !changes.isEmpty()))
          .truth("offered", Meaning.OFFERED, it -> it.solved().offered())
          .truth(
              "allTargetsMet",
              "Whether every fall gets its target in every condition.",
              it -> !it.missesATarget())
          .each(
              "worst",
              WORST,
              "The condition in which each fall or outlet gets least of its target, by name.",
              it -> it.targeted().stream().map(fall -> new Worst(it, fall)).toList(),
              worst -> worst.fall.name().value())
          .member(
              "conditions",
              Value.someOf(CasesJson.one("solve", IN_A_CONDITION)),
              "In their order.",
              it -> CasesJson.In.list(it.solved()));

  private ConditionsJson() {}

  /** The JSON text. */
  public static String of(SolvedConditions answer) {
    return Json.text(SHAPE, answer);
  }
}
