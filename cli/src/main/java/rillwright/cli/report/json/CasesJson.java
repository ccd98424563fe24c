package rillwright.cli.report.json;

import java.util.function.BiConsumer;
import rillwright.cli.report.NoBalanceWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;

/** A study of a project in several conditions, for programs. */
final class CasesJson {
  private CasesJson() {}

  /**
   * The JSON text.
   *
   * @param study what it is called: the member that holds what it tells of a condition
   * @param members writes those of such an answer
   */
  static <A> String of(Cases<A> answer, String study, BiConsumer<Json, A> members) {
    return Json.object(
        json -> {
          json.words("title", answer.title());
          ChangedField.write(json, answer.changes());
          json.words("study", study);
          json.truth("offered", answer.offered());
          write(json, answer, study, members);
        });
  }

  /** The member that holds what is told of each condition. */
  static <A> void write(Json json, Cases<A> answer, String study, BiConsumer<Json, A> members) {
    json.array(
        "conditions",
        () ->
            answer
                .cases()
                .forEach(one -> json.object(() -> write(json, answer, one, study, members))));
  }

  private static <A> void write(
      Json json, Cases<A> answer, Case<A> one, String study, BiConsumer<Json, A> members) {
    ConditionFields.write(json, one.named());
    json.wordsOrNull(
        "noBalance", one.noBalance().map(why -> NoBalanceWords.of(why, Shown.of(answer))));
    json.objectOrNull(study, one.answer(), (A told) -> members.accept(json, told));
  }
}
