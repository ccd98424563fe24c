package rillwright.cli.page.panel;

import rillwright.cli.file.Project;
import rillwright.cli.file.UncertainQuantities;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.OddsPicture;
import rillwright.cli.report.text.odds.OddsText;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.odds.OddsRequest;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.uncertainty.SamplingPlan;

/** The chance of each target, given what is not known exactly. */
final class OddsPanel implements Panel {
  private static final String SAMPLES = "samples";
  private static final int USUAL = 2000;
  private static final int LEAST = 100;
  private static final int MOST = 100_000;

  @Override
  public String name() {
    return "odds";
  }

  @Override
  public String title() {
    return "Odds";
  }

  @Override
  public String what() {
    return "the chance of each target, given what is not known exactly";
  }

  @Override
  public void form(Project project, Html html) {
    new Form(this, html).text(SAMPLES, SAMPLES, Integer.toString(USUAL));
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project);
    boolean exact = new UncertainQuantities(project).inTheNetwork().isEmpty();
    if (exact || project.network().waysOut().isEmpty()) {
      throw new InvalidInput(
          project.places().whole(),
          "every value is exact here, so there is no chance to compute; write what is not known"
              + " exactly as a tolerance or a range, for example \"38 ft \u00b1 4 ft\" or \"0 % .."
              + " 40 %\"");
    }
    int samples = filled.number(SAMPLES, LEAST, MOST, USUAL);
    int threads = Runtime.getRuntime().availableProcessors();
    OddsAnswer answer =
        new OddsRequest(new SamplingPlan(samples, 1, threads)).answer(project, progress);
    Page page = OddsText.of(answer);
    return HtmlPage.below(OddsPicture.of(answer).map(page::with).orElse(page), name());
  }
}
