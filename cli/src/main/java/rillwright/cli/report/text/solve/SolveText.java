package rillwright.cli.report.text.solve;

import rillwright.cli.report.mend.FirstWords;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.RunningCost;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.report.text.visit.VisitSheet;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.finding.Finding;

/** A solved project on one page. */
public final class SolveText {
  private SolveText() {}

  /** The first remedy, the falls, warnings and notes. */
  public static Page brief(Solved solved, MendAnswer first) {
    PageBuilder page = begun(solved, first);
    FallsTable.print(solved, page);
    findings(solved, first, page);
    return page.build();
  }

  private static PageBuilder begun(Solved solved, MendAnswer first) {
    PageBuilder page = ChangedWords.page(solved.title(), solved.changes());
    FirstWords.of(first)
        .ifPresent(
            words -> {
              page.space();
              page.paragraph(words);
            });
    return page;
  }

  /**
   * The page.
   *
   * @param first the remedies, the first of which is shown
   */
  public static Page of(Solved solved, MendAnswer first) {
    PageBuilder page = begun(solved, first);
    FallsTable.print(solved, page);
    PumpsTable.print(solved, page);
    SuctionTable.print(solved, page);
    LevelsTable.print(solved, page);
    LinesTable.print(solved, page);
    GaugesTable.print(solved, page);
    findings(solved, first, page);
    if (!solved.boils()) {
      RunningCost.print(solved.takes(), Shown.of(solved), page);
    }
    VisitSheet.print(solved, page);
    if (!solved.state().network().isPumped()) {
      page.marked("- ", SiteCautions.UPHILL);
    }
    return page.build();
  }

  private static void findings(Solved solved, MendAnswer first, PageBuilder page) {
    page.heading("WARNINGS AND NOTES");
    if (solved.findings().isEmpty()) {
      page.paragraph("No warnings.");
    }
    for (Finding finding : solved.findings()) {
      page.marked("! ", finding.message(Shown.of(solved)));
    }
    FirstWords.alsoOf(first).forEach(words -> page.marked("- ", words));
    int ranges = solved.job().ranges();
    if (ranges > 0) {
      String middles =
          (ranges == 1
                  ? "1 value of the file is a range"
                  : ranges + " values of the file are ranges")
              + "; the figures here are those of the middle.";
      page.paragraph(middles + " \"rillwright odds\" shows the spread.", middles);
    }
  }
}
