package rillwright.cli.report.json;

import rillwright.cli.report.Solved;
import rillwright.cli.report.conditions.ConditionsAnswer;
import rillwright.cli.report.conditions.Outcome;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** A project in several conditions, for programs. */
public final class ConditionsJson {
  private final Json json;
  private final ConditionsAnswer answer;

  private ConditionsJson(Json json, ConditionsAnswer answer) {
    this.json = json;
    this.answer = answer;
  }

  /** The JSON text. */
  public static String of(ConditionsAnswer answer) {
    return Json.object(json -> new ConditionsJson(json, answer).write());
  }

  private void write() {
    json.words("title", answer.title());
    ChangedField.writeIfAny(json, answer.changes());
    json.truth("offered", answer.offered());
    json.truth("allWishesMet", !answer.missesAWish());
    json.object("worst", () -> answer.wished().forEach(fall -> worst(fall.name(), fall)));
    json.array(
        "conditions",
        () -> answer.outcomes().forEach(outcome -> json.object(() -> outcome(outcome))));
  }

  private void worst(PointName name, Point fall) {
    Outcome worst = answer.worstFor(name);
    json.object(
        name.value(),
        () -> {
          json.words("condition", worst.condition());
          json.number("wantM3PerS", fall.wantM3PerS());
          json.number("shareOfWish", worst.shareOfWish(name));
          json.truth("met", !worst.isUnderWish(name));
        });
  }

  private void outcome(Outcome outcome) {
    ConditionFields.write(json, outcome.named());
    json.wordsOrNull("noBalance", outcome.noBalance());
    json.objectOrNull("solve", outcome.solved(), (Solved solved) -> SolveJson.write(json, solved));
  }
}
