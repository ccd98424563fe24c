package rillwright.cli.page.panel;

import rillwright.cli.file.Project;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.text.solve.SolveText;
import rillwright.cli.study.mend.FirstRequest;
import rillwright.cli.study.solve.SolveRequest;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.progress.Progress;

/** Everything that {@code solve} tells. */
final class FiguresPanel implements Panel {
  @Override
  public String name() {
    return "figures";
  }

  @Override
  public String title() {
    return "All figures";
  }

  @Override
  public String what() {
    return "levels, lines, pumps, gauges, what to read on the day";
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project);
    Solved solved = new SolveRequest().answer(project, progress);
    return HtmlPage.below(
        SolveText.of(solved, new FirstRequest(solved).answer(project, progress)), name());
  }
}
