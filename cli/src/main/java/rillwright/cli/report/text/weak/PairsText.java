package rillwright.cli.report.text.weak;

import java.util.List;
import java.util.Optional;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.weak.CausePlace;
import rillwright.cli.report.weak.CauseWords;
import rillwright.cli.report.weak.Chance;
import rillwright.cli.report.weak.Letters;
import rillwright.cli.report.weak.SizePhrase;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.pair.PairExplanation;

/** Two faults at once. */
final class PairsText {
  private PairsText() {}

  /** "Most likely two faults at once: the net is clogged (...) and the pipe is fouled (...)." */
  static String headline(WeakAnswer answer) {
    PairExplanation first = answer.diagnosis().pairs().get(0);
    double all = allPairs(answer);
    boolean alone = answer.diagnosis().pairs().size() == 1;
    return "Most likely two faults at once: "
        + (alone
            ? Chance.about(all) + " that "
            : Chance.about(all)
                + " for all pairs together, "
                + Chance.about(first.probability())
                + " for the likeliest: ")
        + statement(first.one(), answer)
        + " and "
        + statement(first.other(), answer)
        + ". No single fault explains the readings nearly as well.";
  }

  /** The chance that it is any of the pairs. */
  static double allPairs(WeakAnswer answer) {
    return Math.min(
        1, answer.diagnosis().pairs().stream().mapToDouble(PairExplanation::probability).sum());
  }

  private static String statement(PairExplanation.Member member, WeakAnswer answer) {
    return CauseWords.of(member.cause().id().cause()).statement() + place(member, answer);
  }

  /** The pairs under their letters. */
  static void print(WeakAnswer answer, PageBuilder page) {
    List<PairExplanation> pairs = answer.diagnosis().pairs();
    if (pairs.isEmpty()) {
      return;
    }
    int readings = answer.diagnosis().readings().size();
    page.heading("TWO FAULTS AT ONCE");
    for (int i = 0; i < pairs.size(); i++) {
      page.marked(
          "- ",
          Letters.ofPair(i)
              + ", "
              + Chance.words(pairs.get(i).probability())
              + ": "
              + noun(pairs.get(i).one(), answer)
              + " and "
              + noun(pairs.get(i).other(), answer));
    }
    page.paragraph(
        (readings == 1
                ? "One reading cannot settle a pair"
                : readings + " readings seldom settle a pair")
            + ": one wrong reading often looks the same, so read again before anything is taken"
            + " apart.");
  }

  private static String noun(PairExplanation.Member member, WeakAnswer answer) {
    return CauseWords.of(member.cause().id().cause()).noun() + place(member, answer);
  }

  private static String place(PairExplanation.Member member, WeakAnswer answer) {
    String place = CausePlace.words(member.cause().id(), answer.scope().job());
    Optional<String> size =
        SizePhrase.of(member.cause().id(), member.size(), member.choice(), answer);
    String phrase = size.map(text -> (place.isEmpty() ? "" : ", ") + text).orElse("");
    return place.isEmpty() && phrase.isEmpty() ? "" : " (" + place + phrase + ")";
  }
}
