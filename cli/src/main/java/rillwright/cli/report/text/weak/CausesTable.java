package rillwright.cli.report.text.weak;

import java.util.List;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.weak.CausePlace;
import rillwright.cli.report.weak.Chance;
import rillwright.cli.report.weak.Letters;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.report.weak.SizePhrase;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.inference.Explanation;

/** The causes, likeliest first: the first group with letters, then what is not ruled out. */
final class CausesTable {
  private static final double WORTH_TELLING = 0.01;

  private static final String AMONG =
      "Chances are among the causes tried here, if the file and the readings are right; they prove"
          + " none of them.";

  private CausesTable() {}

  /**
   * Prints them.
   *
   * @param letters how many causes are named at least, because other tables use their letters
   */
  static void print(WeakAnswer answer, int letters, PageBuilder page) {
    int group = answer.diagnosis().firstGroup().size();
    boolean pairsLead = answer.diagnosis().pairsLead();
    TableBuilder table = heading(pairsLead ? "" : "MOST LIKELY");
    rows(table, answer, answer.diagnosis().firstGroup(), 0);
    if (pairsLead) {
      page.heading("IF IT IS ONE FAULT AFTER ALL");
      page.paragraph(
          "All single faults together: " + Chance.words(1 - PairsText.allPairs(answer)) + ".");
      page.table(table);
    } else {
      page.table(table);
      page.paragraph(apart(answer, group));
    }
    List<Explanation> others =
        answer.diagnosis().causes().stream()
            .skip(group)
            .limit(Math.max(likely(answer), letters) - group)
            .toList();
    TableBuilder less = heading("LESS LIKELY");
    rows(less, answer, others, group);
    page.tableOfAny(less);
    int left = answer.diagnosis().causes().size() - group - others.size();
    if (left > 0) {
      page.paragraph(
          left == 1
              ? "The one other is under 1 %."
              : "All " + left + " others are under 1 % each.");
    }
    int untried = answer.diagnosis().untried();
    if (untried > 0) {
      page.paragraph(
          "Not tried, because the job is large: "
              + Shown.of(answer).number(untried)
              + " more causes at their places, those with the least weight before any reading."
              + " Together they are counted as \"none of these\".");
    }
  }

  /** How many causes are worth telling, the first group included. */
  private static int likely(WeakAnswer answer) {
    int group = answer.diagnosis().firstGroup().size();
    int likely =
        (int)
            answer.diagnosis().causes().stream()
                .filter(cause -> cause.probability() >= WORTH_TELLING)
                .count();
    return Math.max(group, likely);
  }

  private static TableBuilder heading(String heading) {
    return new TableBuilder(heading)
        .column("cause", Side.LEFT)
        .column("chance", Side.RIGHT)
        .column("how large", Side.LEFT)
        .column("where", Side.LEFT);
  }

  private static void rows(
      TableBuilder table, WeakAnswer answer, List<Explanation> causes, int firstLetter) {
    double all = answer.diagnosis().pairsLead() ? 1 - PairsText.allPairs(answer) : 1;
    for (int i = 0; i < causes.size(); i++) {
      Explanation explanation = causes.get(i);
      table.row(
          Letters.of(firstLetter + i),
          explanation.cause().id().cause(),
          Chance.words(all * explanation.probability()),
          SizePhrase.of(explanation, answer).orElse(""),
          CausePlace.words(explanation.cause().id(), answer.scope().job()));
    }
  }

  private static String apart(WeakAnswer answer, int group) {
    if (group == 1) {
      return AMONG;
    }
    ReadingWords words = new ReadingWords(Shown.of(answer));
    return answer
        .diagnosis()
        .separatedBy()
        .map(
            next ->
                AMONG + " The reading that separates them best: " + words.name(next.what()) + ".")
        .orElse(AMONG + " No reading separates them: open a union and look.");
  }
}
