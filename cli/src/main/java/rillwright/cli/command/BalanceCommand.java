package rillwright.cli.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.command.argument.DrawnReportArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.ValveArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.WithTargets;
import rillwright.cli.report.json.BalanceJson;
import rillwright.cli.report.picture.SharePicture;
import rillwright.cli.report.text.balance.BalanceText;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.cli.study.balance.BalanceRequest;
import rillwright.cli.study.balance.ValveSweeps;
import rillwright.solver.study.valvesetting.ValvePlace;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;

/** How far to close each valve so that every fall gets its share. */
@Command(
    name = "balance",
    description = {
      "Finds valve openings that give every fall the same fraction of its target.",
      "The fraction is the largest that the pump allows: the way to the governing fall stays wide",
      "open, the others are throttled. The answer says which valve to set first and how",
      "sensitive each is."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright balance falls.yaml",
      "  rillwright balance falls.yaml --target            no more than the targets",
      "  rillwright balance falls.yaml --valves low,high",
      "  rillwright balance falls.yaml --chart share.png",
      "  rillwright balance falls.yaml --set \"lines.high.pipe.size=2 in\"",
      "  rillwright balance falls.yaml --strict          1 if the pump is too small for the targets"
    })
public final class BalanceCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Mixin private ValveArguments valves;

  @Option(
      names = "--target",
      description = "Gives every fall exactly its target if the pump is strong enough.")
  private boolean target;

  @Option(
      names = "--strict",
      description =
          "Ends with exit status 1 if the falls cannot all get their target or a chamber is drawn"
              + " down to its pump's intake.")
  private boolean strict;

  @Mixin private DrawnReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(project.inputs(read));
    ChosenPumps.require(read);
    WithTargets.require(read, "there is nothing to balance");
    List<ValvePlace> places = valves.placesIn(read);
    BalanceAnswer answer =
        project.ask(new BalanceRequest(places, target ? Aim.TARGET : Aim.LARGEST_SHARE), read);
    report.print(
        () -> BalanceJson.of(answer),
        () -> BalanceText.of(answer),
        () -> Optional.of(SharePicture.of(answer, ValveSweeps.of(answer))));
    return strict && answer.fallsShort() ? ExitStatus.TARGET_MISSED : ExitStatus.DONE;
  }
}
