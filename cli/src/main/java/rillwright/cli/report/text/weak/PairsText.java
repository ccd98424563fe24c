package rillwright.cli.report.text.weak;

import java.util.OptionalDouble;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.weak.CausePlace;
import rillwright.cli.report.weak.CauseWords;
import rillwright.cli.report.weak.SizePhrase;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.inference.PairExplanation;

/** Two causes at once, where no single one explains what was read. */
final class PairsText {
  private PairsText() {}

  static void print(WeakAnswer answer, PageBuilder page) {
    boolean noneLeads = answer.diagnosis().causes().get(0).cause().isUnnamed();
    if (answer.pairs().isEmpty()) {
      if (answer.diagnosis().isUnexplained() && noneLeads) {
        page.marked("! ", "No single fault fits all readings, and no pair of faults does.");
      }
      return;
    }
    int readings = answer.diagnosis().readings().size();
    page.marked(
        "! ",
        (noneLeads
                ? "No single fault fits all readings; these pairs do, most likely first."
                : "Two faults at once are possible; these pairs fit too, most likely first.")
            + (readings == 1
                ? " One reading cannot settle a pair"
                : " " + readings + " readings seldom settle a pair")
            + ": one wrong reading often looks the same, so read again before anything is taken"
            + " apart.");
    for (PairExplanation pair : answer.pairs()) {
      page.marked(
          "- ",
          shown(pair.one().id(), pair.sizeOfOne(), answer)
              + " and "
              + shown(pair.other().id(), pair.sizeOfOther(), answer));
    }
  }

  private static String shown(CauseId id, OptionalDouble size, WeakAnswer answer) {
    String place = CausePlace.words(id, answer.scope().job());
    String phrase = SizePhrase.of(id, size, answer).map(text -> ", " + text).orElse("");
    String noun = CauseWords.of(id.cause()).noun();
    return place.isEmpty() && phrase.isEmpty() ? noun : noun + " (" + place + phrase + ")";
  }
}
