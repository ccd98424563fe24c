package rillwright.cli.page.panel;

import rillwright.cli.file.Project;
import rillwright.cli.need.OtherPumps;
import rillwright.cli.need.WithTargets;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.text.duty.DutyText;
import rillwright.cli.study.duty.DutyRequest;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;

/** The flow and head that a pump must make. */
final class DutyPanel implements Panel {
  @Override
  public String name() {
    return "duty";
  }

  @Override
  public String what() {
    return "the flow and head that the pump must make for the targets";
  }

  @Override
  public void form(Project project, Html html) {
    PumpLines.choice(this, project, html);
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    PumpPlace place = PumpLines.of(project, filled);
    WithTargets.require(project);
    OtherPumps.requireChosen(project, place);
    return HtmlPage.below(DutyText.of(new DutyRequest(place).answer(project, progress)), name());
  }
}
