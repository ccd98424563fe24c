package rillwright.cli.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.ReportArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.report.json.CheckJson;
import rillwright.cli.report.text.check.CheckText;
import rillwright.cli.study.check.CheckRequest;
import rillwright.cli.study.check.Checked;

/** Whether a file is right, and what it says. */
@Command(
    name = "check",
    description = {
      "Checks a project file and lists what it describes.",
      "It lists the points, the lines part by part with bores and losses, the pump sheets, and",
      "the values taken where the file is silent. All errors are listed at once, each with file,",
      "line and column."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright check pond.yaml",
      "  rillwright check pond.yaml --set \"lines.supply.pipe.size=3 in\"",
      "  rillwright check pond.yaml --format json"
    })
public final class CheckCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Mixin private ReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(project.inputs(read));
    Checked checked = project.ask(new CheckRequest(), read);
    report.print(() -> CheckJson.of(checked), () -> CheckText.of(checked));
    return ExitStatus.DONE;
  }
}
