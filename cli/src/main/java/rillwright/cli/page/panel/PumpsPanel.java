package rillwright.cli.page.panel;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.ImpossibleSheets;
import rillwright.cli.need.OtherPumps;
import rillwright.cli.need.WithTargets;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.CandidatesPicture;
import rillwright.cli.report.text.choice.PumpsText;
import rillwright.cli.study.choice.CandidateCurves;
import rillwright.cli.study.choice.PumpsAnswer;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;

/**
 * Which pump meets the targets, of those that the project names and of other data sheets.
 *
 * @param sheets others
 */
record PumpsPanel(SheetChoice sheets) implements Panel {
  private static final int SHOWN = 4;

  @Override
  public String name() {
    return "pumps";
  }

  @Override
  public String what() {
    return "which of your data sheets meets the targets, ranked by cost";
  }

  @Override
  public void form(Project project, Html html) {
    PumpLines.choice(this, project, html);
    sheets.form(this, "the project's own", html);
    new Form(this, html).conditions();
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    PumpPlace place = PumpLines.of(project, filled);
    WithTargets.require(project);
    OtherPumps.requireChosen(project, place);
    SheetFolder tried =
        sheets
            .sheets(project, filled)
            .orElseGet(() -> new SheetFolder(project.sheets(), List.of()));
    if (tried.sheets().isEmpty()) {
      throw new InvalidInput(project.places().whole(), "no data sheet is there to try");
    }
    PumpsAnswer answer =
        new PumpsRequest(
                place,
                ImpossibleSheets.without(tried, project),
                1,
                PumpsRequest.USUAL_YEARS,
                filled.inConditions(project, state -> ChosenPumps.requireFor(state, place)))
            .answer(project, progress);
    Html html = new Html();
    html.made(
        HtmlPage.below(
            PumpsText.of(answer).with(CandidatesPicture.of(answer, CandidateCurves.of(answer))),
            name()));
    html.open("p", "class", "row");
    answer.choice().ranked().stream()
        .map(rated -> rated.trial().setup())
        .filter(setup -> setup.count() == 1)
        .limit(SHOWN)
        .forEach(setup -> sheets.take(project, place, setup, filled, List.of(), html));
    return html.close().done();
  }
}
