package rillwright.cli.page.panel;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.Unknowns;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.OddsPicture;
import rillwright.cli.report.text.odds.OddsConditionsText;
import rillwright.cli.report.text.odds.OddsText;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.condition.InConditions;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.odds.OddsRequest;
import rillwright.curves.chart.content.Chart;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.uncertainty.SamplingPlan;

/** The chance of each target, given what is not known exactly. */
final class OddsPanel implements Panel {
  private static final String SAMPLES = "samples";
  private static final int USUAL = 2000;

  @Override
  public String name() {
    return "odds";
  }

  @Override
  public String what() {
    return "the chance of each target, given what is not known exactly";
  }

  @Override
  public void form(Project project, Html html) {
    Form form = new Form(this, html);
    form.text(SAMPLES, "how many samples", Integer.toString(USUAL));
    form.conditions();
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project);
    Unknowns.requireForOdds(project);
    int samples =
        filled.number(SAMPLES, OddsRequest.LEAST_SAMPLES, OddsRequest.MOST_SAMPLES, USUAL);
    int threads = Runtime.getRuntime().availableProcessors();
    OddsRequest request = new OddsRequest(new SamplingPlan(samples, 1, threads));
    if (filled.inConditions(project, ChosenPumps::require).isPresent()) {
      Cases<OddsAnswer> cases = new InConditions<>(request, List.of()).answer(project, progress);
      return shown(OddsConditionsText.of(cases), OddsPicture.of(cases));
    }
    OddsAnswer answer = request.answer(project, progress);
    return shown(OddsText.of(answer), OddsPicture.of(answer));
  }

  private String shown(Page page, Optional<? extends Chart> picture) {
    return HtmlPage.below(picture.map(page::with).orElse(page), name());
  }
}
