package rillwright.cli.page.panel;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.text.conditions.ConditionsText;
import rillwright.cli.report.text.solve.SolveText;
import rillwright.cli.study.condition.InConditions;
import rillwright.cli.study.condition.SolvedConditions;
import rillwright.cli.study.mend.FirstRequest;
import rillwright.cli.study.solve.SolveRequest;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.progress.Progress;

/** Everything that {@code solve} tells. */
final class FiguresPanel implements Panel {
  @Override
  public String name() {
    return "solve";
  }

  @Override
  public String what() {
    return "levels, lines, pumps, gauges, what to read on the day";
  }

  @Override
  public void form(Project project, Html html) {
    new Form(this, html).conditions();
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project);
    if (filled.inConditions(project, ChosenPumps::require).isPresent()) {
      SolvedConditions answer =
          new SolvedConditions(
              new InConditions<>(new SolveRequest(), List.of()).answer(project, progress),
              project.network());
      return HtmlPage.below(ConditionsText.of(answer), name());
    }
    Solved solved = new SolveRequest().answer(project, progress);
    return HtmlPage.below(
        SolveText.of(solved, new FirstRequest(solved).answer(project, progress)), name());
  }
}
