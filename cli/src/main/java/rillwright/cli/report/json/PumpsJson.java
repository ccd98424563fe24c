package rillwright.cli.report.json;

import rillwright.cli.report.units.Shown;
import rillwright.cli.study.choice.PumpsAnswer;
import rillwright.solver.trial.Demand;

/** Pumps tried, for programs. */
public final class PumpsJson {
  private PumpsJson() {}

  /** The JSON text. */
  public static String of(PumpsAnswer answer) {
    return Json.object(json -> write(json, answer));
  }

  private static void write(Json json, PumpsAnswer answer) {
    TrialFields trials = new TrialFields(json, Shown.of(answer), answer.year());
    Demand demand = answer.choice().demand();
    json.words("title", answer.duty().title());
    ChangedField.write(json, answer.changes());
    json.object("duty", () -> DutyJson.write(json, answer.duty()));
    json.number("years", answer.terms().years());
    json.wordsOrNull("currency", answer.currency());
    json.array(
        "candidates",
        () ->
            answer
                .choice()
                .ranked()
                .forEach(
                    rated ->
                        json.object(() -> trials.write(rated, demand, rated.costOverYears()))));
    json.array("faults", () -> answer.faults().forEach(fault -> json.words(fault.toString())));
    json.array("notBalanced", () -> answer.choice().leftOut().forEach(json::words));
    answer.conditions().ifPresent(judging -> ConditionFields.judging(json, judging));
    trials.effort(answer.effort());
  }
}
