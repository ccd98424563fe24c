package rillwright.cli.report.text.solve;

import java.util.List;
import rillwright.cli.report.RunningFigures;
import rillwright.cli.report.Solved;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.Ink;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.text.RunningCost;
import rillwright.cli.report.text.visit.VisitSheet;
import rillwright.solver.finding.Finding;

/** Tells a solved project on one page. */
public final class SolveText {
  private SolveText() {}

  /** The page. */
  public static String of(Solved solved, List<String> changes, Ink ink) {
    Page page = new Page(ink);
    page.title(solved.title());
    ChangedWords.print(changes, page);
    FallsTable.print(solved, page);
    PumpsTable.print(solved, page);
    LevelsTable.print(solved, page);
    LinesTable.print(solved, page);
    GaugesTable.print(solved, page);
    findings(solved, page);
    RunningCost.print(RunningFigures.of(solved.state(), solved.running()), solved.units(), page);
    VisitSheet.print(solved, page);
    return page.toString();
  }

  private static void findings(Solved solved, Page page) {
    page.heading("WHAT TO KNOW");
    if (solved.findings().isEmpty()) {
      page.paragraph("Nothing stands out.");
    }
    for (Finding finding : solved.findings()) {
      page.marked("! ", finding.message(solved.units()));
    }
  }
}
