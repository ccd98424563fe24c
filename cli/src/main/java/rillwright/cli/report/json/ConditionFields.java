package rillwright.cli.report.json;

import rillwright.cli.study.condition.JudgingConditions;
import rillwright.cli.study.condition.NamedCondition;
import rillwright.cli.study.condition.NamedCondition.Changed;

/** A condition and what it changes in the file. */
final class ConditionFields {
  private ConditionFields() {}

  static void write(Json json, NamedCondition condition) {
    json.words("name", condition.name());
    json.array("changes", () -> condition.changes().forEach(change -> changed(json, change)));
  }

  private static void changed(Json json, Changed change) {
    json.object(
        () -> {
          json.words("quantity", change.quantity());
          json.words("value", change.value());
        });
  }

  /** The conditions that judge the choices of a study. */
  static void judging(Json json, JudgingConditions judging) {
    json.truth("offered", judging.offered());
    json.array(
        "conditions",
        () -> judging.conditions().forEach(condition -> json.object(() -> write(json, condition))));
  }
}
