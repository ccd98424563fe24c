package rillwright.cli.report.json;

import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.SolvedConditions;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** A project in several conditions, for programs. */
public final class ConditionsJson {
  private final Json json;
  private final SolvedConditions answer;

  private ConditionsJson(Json json, SolvedConditions answer) {
    this.json = json;
    this.answer = answer;
  }

  /** The JSON text. */
  public static String of(SolvedConditions answer) {
    return Json.object(json -> new ConditionsJson(json, answer).write());
  }

  private void write() {
    json.words("title", answer.solved().title());
    ChangedField.writeIfAny(json, answer.solved().changes());
    json.truth("offered", answer.solved().offered());
    json.truth("allWishesMet", !answer.missesAWish());
    json.object("worst", () -> answer.wished().forEach(fall -> worst(fall.name(), fall)));
    CasesJson.write(json, answer.solved(), "solve", SolveJson::write);
  }

  private void worst(PointName name, Point fall) {
    Case<Solved> worst = answer.worstFor(name);
    json.object(
        name.value(),
        () -> {
          json.words("condition", worst.condition());
          json.number("wantM3PerS", fall.wantM3PerS());
          json.number("shareOfWish", answer.shareOfWish(name, worst));
          json.truth("met", !answer.isUnderWish(name, worst));
        });
  }
}
