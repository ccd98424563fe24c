package rillwright.cli.report.text.choice;

import java.util.List;
import rillwright.cli.report.page.PageBuilder;
import rillwright.solver.study.pipechoice.RankedPipes;
import rillwright.solver.study.pipechoice.SizedPipe;

/**
 * Sizes as a table shows them: the best, the rest shown by number.
 *
 * @param rows the best first
 * @param more how many are not shown
 */
record ShownSizes<P extends SizedPipe>(List<P> rows, int more) {
  private static final int MOST_ROWS = 16;

  ShownSizes {
    rows = List.copyOf(rows);
  }

  static <P extends SizedPipe> ShownSizes<P> of(RankedPipes<P> choice) {
    List<P> ranked = choice.ranked();
    int rows = Math.min(MOST_ROWS, ranked.size());
    return new ShownSizes<>(ranked.subList(0, rows), ranked.size() - rows);
  }

  void tellMore(PageBuilder page) {
    if (more > 0) {
      String others = "and " + more + " more";
      page.paragraph(
          others + "; the answer for programs (\"--format json\") has them all.", others + ".");
    }
  }
}
