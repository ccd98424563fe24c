package rillwright.cli.page.panel;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.need.AdjustableValves;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.WithTargets;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.text.balance.BalanceText;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.cli.study.balance.BalanceRequest;
import rillwright.cli.study.mend.kind.Valves;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.valvesetting.ValvePlace;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;

/** How far to close the valves of falls that share a pump. */
final class BalancePanel implements Panel {
  private static final String TARGETS = "just the targets";

  @Override
  public String name() {
    return "balance";
  }

  @Override
  public String what() {
    return "how far to close the valves of falls that share a pump";
  }

  @Override
  public void form(Project project, Html html) {
    new Form(this, html)
        .choice("aim", "every fall gets", List.of("the largest even share", TARGETS));
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project);
    WithTargets.require(project, "there is nothing to balance");
    List<ValvePlace> valves = AdjustableValves.in(project, ", in the fields of the valve");
    Aim aim = filled.text("aim").equals(TARGETS) ? Aim.TARGET : Aim.LARGEST_SHARE;
    BalanceAnswer answer = new BalanceRequest(valves, aim).answer(project, progress);
    Html html = new Html();
    html.made(HtmlPage.below(BalanceText.of(answer), name()));
    if (Valves.canBeWritten(answer.settings())) {
      html.open("p", "class", "row");
      Form.apply(html, "Set the valves so", Valves.changes(project, answer.settings()));
      html.close();
    }
    return html.done();
  }
}
