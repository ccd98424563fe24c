package rillwright.cli.report.text.solve;

import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.RunningCost;
import rillwright.cli.report.text.visit.VisitSheet;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.finding.Finding;

/** Tells a solved project on one page. */
public final class SolveText {
  private SolveText() {}

  /** The page. */
  public static Page of(Solved solved) {
    PageBuilder page = ChangedWords.page(solved.title(), solved.changes());
    FallsTable.print(solved, page);
    PumpsTable.print(solved, page);
    LevelsTable.print(solved, page);
    LinesTable.print(solved, page);
    GaugesTable.print(solved, page);
    findings(solved, page);
    RunningCost.print(solved.takes(), Shown.of(solved), page);
    VisitSheet.print(solved, page);
    return page.build();
  }

  private static void findings(Solved solved, PageBuilder page) {
    page.heading("WARNINGS AND NOTES");
    if (solved.findings().isEmpty()) {
      page.paragraph("No warnings.");
    }
    for (Finding finding : solved.findings()) {
      page.marked("! ", finding.message(Shown.of(solved)));
    }
  }
}
