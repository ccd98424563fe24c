package rillwright.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.command.argument.ConditionArguments;
import rillwright.cli.command.argument.CostArguments;
import rillwright.cli.command.argument.DrawnReportArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.PumpArguments;
import rillwright.cli.command.argument.TogetherArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.ImpossibleSheets;
import rillwright.cli.need.OtherPumps;
import rillwright.cli.need.WithTargets;
import rillwright.cli.report.json.PumpsJson;
import rillwright.cli.report.picture.CandidatesPicture;
import rillwright.cli.report.text.choice.PumpsText;
import rillwright.cli.study.choice.CandidateCurves;
import rillwright.cli.study.choice.PumpsAnswer;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.solver.pumping.PumpPlace;

/** Which pump of a folder of data sheets meets the targets. */
@Command(
    name = "pumps",
    description = {
      "Tries every pump data sheet of a folder in the project and ranks them.",
      "Pumps that meet every target come first, by cost over the years; for the others it lists",
      "what is missing.",
      "Where a sheet says \"# variable speed: 40..100 %%\", its least sufficient speed is tried"
          + " too.",
      "The pump may still be to be chosen (\"- pump: to be chosen\")."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright pumps pond.yaml --from pumps",
      "  rillwright pumps pond.yaml --from pumps --max-pumps 2 --years 5   also two together",
      "  rillwright pumps pond.yaml --from pumps --chart pumps.png",
      "  rillwright pumps pond.yaml --from pumps --conditions   which also meet the target in"
          + " autumn",
      "  rillwright pumps pond.yaml --from pumps --set \"lines.intake.skimmer.clogged=40 %%\""
    })
public final class PumpsCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Option(
      names = "--from",
      paramLabel = "FOLDER",
      required = true,
      description = "Takes the data sheets from this folder (.csv files).")
  private Path folder;

  @Mixin private PumpArguments pump;

  @Mixin private TogetherArguments together;

  @Mixin private CostArguments cost;

  @Mixin private ConditionArguments conditions;

  @Mixin private DrawnReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(project.inputs(read).andSheetsOf(folder));
    PumpPlace place = pump.placeIn(read);
    WithTargets.require(read);
    OtherPumps.requireChosen(read, place);
    final double years = cost.years();
    SheetFolder sheets = SheetFolder.read(folder, read.network().water().densityKgPerM3());
    SheetFolder possible = ImpossibleSheets.without(sheets, read);
    conditions.requireFit(read, state -> ChosenPumps.requireFor(state, place));
    PumpsAnswer answer =
        project.ask(
            new PumpsRequest(place, possible, together.upTo(), years, conditions.asked()), read);
    report.print(
        () -> PumpsJson.of(answer),
        () -> PumpsText.of(answer),
        () -> Optional.of(CandidatesPicture.of(answer, CandidateCurves.of(answer))));
    return ExitStatus.DONE;
  }
}
