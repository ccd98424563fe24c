package rillwright.cli.page;

import java.nio.file.Path;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.job.PhotoFolder;
import rillwright.cli.page.web.Asked;
import rillwright.cli.page.web.Reply;
import rillwright.cli.report.NoBalanceWords;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.text.jobsheet.Audience;
import rillwright.cli.report.text.jobsheet.MaterialsCsv;
import rillwright.cli.report.text.jobsheet.ReadingsYaml;
import rillwright.cli.report.text.jobsheet.SheetText;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.cli.study.jobsheet.SheetRequest;
import rillwright.solver.steady.NoBalance;

/** The job sheet and its lists, as documents of their own. */
final class Papers {
  private Papers() {}

  static Reply of(Asked asked, Project project, Path folder) {
    try {
      SheetAnswer answer = new SheetRequest(PumpsRequest.USUAL_YEARS).answer(project);
      Optional<Audience> audience = Audience.find(asked.text("for"));
      return switch (asked.path()) {
        case "materials.csv" ->
            Reply.file("text/csv", MaterialsCsv.of(answer.materials(), Shown.of(answer)));
        case "readings.yaml" -> Reply.file("text/plain", ReadingsYaml.of(answer));
        default ->
            Reply.document(
                HtmlPage.of(
                    SheetText.of(answer, audience, new PhotoFolder(folder)::base64), "sheet"));
      };
    } catch (NoBalance none) {
      return Reply.file("text/plain", NoBalanceWords.of(none.reason(), Shown.of(project.show())));
    }
  }
}
