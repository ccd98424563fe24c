package rillwright.cli.report.text.solve;

import java.util.List;
import rillwright.cli.report.RunningFigures;
import rillwright.cli.report.Solved;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.RunningCost;
import rillwright.cli.report.text.visit.VisitSheet;
import rillwright.solver.finding.Finding;

/** Tells a solved project on one page. */
public final class SolveText {
  private SolveText() {}

  /** The page. */
  public static Page of(Solved solved, List<String> changes) {
    PageBuilder page = ChangedWords.page(solved.title(), changes);
    FallsTable.print(solved, page);
    PumpsTable.print(solved, page);
    LevelsTable.print(solved, page);
    LinesTable.print(solved, page);
    GaugesTable.print(solved, page);
    findings(solved, page);
    RunningCost.print(RunningFigures.of(solved.state(), solved.running()), solved.units(), page);
    VisitSheet.print(solved, page);
    return page.build();
  }

  private static void findings(Solved solved, PageBuilder page) {
    page.heading("WHAT TO KNOW");
    if (solved.findings().isEmpty()) {
      page.paragraph("Nothing stands out.");
    }
    for (Finding finding : solved.findings()) {
      page.marked("! ", finding.message(solved.units()));
    }
  }
}
