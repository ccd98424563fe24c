package rillwright.cli.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.PumpArguments;
import rillwright.cli.command.argument.ReportArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.need.OtherPumps;
import rillwright.cli.need.WithTargets;
import rillwright.cli.report.json.DutyJson;
import rillwright.cli.report.text.duty.DutyText;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.cli.study.duty.DutyRequest;
import rillwright.solver.pumping.PumpPlace;

/** The flow and head that a pump must make. */
@Command(
    name = "duty",
    description = {
      "Finds the flow and head that the pump must make to meet every target.",
      "It gives two points: with the valves as they stand, and with the falls that get too much",
      "throttled. The pump may still be to be chosen (\"- pump: to be chosen\"); one that the",
      "file names is ignored."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright duty pond.yaml",
      "  rillwright duty pond.yaml --set \"lines.supply.pipe.size=3 in\"",
      "  rillwright duty pond.yaml --format json"
    })
public final class DutyCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Mixin private PumpArguments pump;

  @Mixin private ReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(project.inputs(read));
    PumpPlace place = pump.placeIn(read);
    WithTargets.require(read);
    OtherPumps.requireChosen(read, place);
    DutyAnswer answer = project.ask(new DutyRequest(place), read);
    report.print(() -> DutyJson.of(answer), () -> DutyText.of(answer));
    return ExitStatus.DONE;
  }
}
