package rillwright.cli.page.panel;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.Unknowns;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.LearntPumpPicture;
import rillwright.cli.report.text.asbuilt.AsbuiltText;
import rillwright.cli.report.text.asbuilt.LearntChanges;
import rillwright.cli.study.asbuilt.AsbuiltAnswer;
import rillwright.cli.study.asbuilt.AsbuiltRequest;
import rillwright.cli.study.asbuilt.NothingFits;
import rillwright.solver.progress.Progress;

/** What readings say of what was not known exactly. */
final class AsbuiltPanel implements Panel {
  @Override
  public String name() {
    return "asbuilt";
  }

  @Override
  public String what() {
    return "what the readings say of what was not known exactly, to be written into the job";
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project, "; an existing job has a pump, so name it");
    Unknowns.requireForReadings(project);
    Visit visit = VisitReader.inProject(project);
    if (visit.placed().isEmpty()) {
      throw new InvalidInput(
          project.places().whole(),
          "there are no readings to learn from; enter them under \"rillwright weak\"");
    }
    try {
      AsbuiltAnswer answer = new AsbuiltRequest(Optional.of(visit)).answer(project, progress);
      Html html = new Html();
      Page page = AsbuiltText.of(answer);
      html.made(HtmlPage.below(LearntPumpPicture.of(answer).map(page::with).orElse(page), name()));
      List<String> learnt = LearntChanges.of(answer);
      if (answer.fits() && !learnt.isEmpty()) {
        html.open("p", "class", "row");
        Form.apply(html, "Write what was learnt into the job", learnt);
        html.close();
      }
      return html.done();
    } catch (NothingFits nothing) {
      throw Unknowns.nothingFits(project);
    }
  }
}
