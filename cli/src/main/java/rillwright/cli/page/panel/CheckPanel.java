package rillwright.cli.page.panel;

import rillwright.cli.file.Project;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.text.check.CheckText;
import rillwright.cli.study.check.CheckRequest;
import rillwright.solver.progress.Progress;

/** What the file describes, with the values taken where it is silent. */
final class CheckPanel implements Panel {
  @Override
  public String name() {
    return "check";
  }

  @Override
  public String what() {
    return "what is described, and the values taken where the file is silent";
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    return HtmlPage.below(CheckText.of(new CheckRequest().answer(project, progress)), name());
  }
}
