package rillwright.cli.page.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.file.Project;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.mend.RemedyWords;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.text.mend.MendText;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.MendRequest;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.progress.Progress;

/**
 * What would give every fall its target.
 *
 * @param sheets that may be bought
 */
record MendPanel(SheetChoice sheets) implements Panel {
  private static final int SHOWN = 5;

  @Override
  public String name() {
    return "mend";
  }

  @Override
  public String what() {
    return "what would give every fall its target, and for how much";
  }

  @Override
  public void form(Project project, Html html) {
    Form form = new Form(this, html);
    List<String> from = new ArrayList<>(List.of("the project's own"));
    from.addAll(sheets.folders());
    form.choice("from", "pumps", from);
    form.conditions();
  }

  private Offered offered(Project project, Filled filled) {
    return sheets
        .from(filled)
        .flatMap(
            from -> sheets.sheets(project, filled).map(it -> new Offered(it.sheets(), from + "/")))
        .orElse(Offered.NOTHING);
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project);
    MendAnswer answer =
        new MendRequest(
                offered(project, filled),
                List.of(),
                PumpsRequest.USUAL_YEARS,
                OptionalDouble.empty(),
                filled.inConditions(project, ChosenPumps::require))
            .answer(project, progress);
    Html html = new Html();
    html.made(HtmlPage.below(MendText.of(answer), name()));
    html.open("p", "class", "row");
    for (Remedy remedy : answer.mending().stream().limit(SHOWN).toList()) {
      Form.apply(
          html,
          "Try: " + RemedyWords.of(remedy.candidate(), answer.state().network(), Shown.of(answer)),
          remedy.candidate().set());
    }
    return html.close().done();
  }
}
