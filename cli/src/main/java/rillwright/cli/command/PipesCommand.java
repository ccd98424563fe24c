package rillwright.cli.command;

import java.nio.file.Path;
import java.util.List;
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
import rillwright.cli.command.argument.SizeArguments;
import rillwright.cli.command.argument.TogetherArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.ImpossibleSheets;
import rillwright.cli.need.OtherPumps;
import rillwright.cli.need.SizesJob;
import rillwright.cli.need.WithTargets;
import rillwright.cli.output.InputFiles;
import rillwright.cli.report.json.PipesJson;
import rillwright.cli.report.picture.GravityPicture;
import rillwright.cli.report.picture.SizesPicture;
import rillwright.cli.report.text.choice.SizesText;
import rillwright.cli.study.Request;
import rillwright.cli.study.choice.GravityAnswer;
import rillwright.cli.study.choice.GravityRequest;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.cli.study.choice.PipesRequest;
import rillwright.cli.study.choice.SizeCurves;
import rillwright.cli.study.choice.SizeWithoutEffect;
import rillwright.solver.pumping.PumpPlace;

/** Which size of pipe. */
@Command(
    name = "pipes",
    description = {
      "Compares pipe sizes by flow, power and cost.",
      "Tries sizes for a line, or for several together (one trench) or each freely"
          + " (--independent),",
      "and ranks them by what pipe, pump and electricity cost over the years; where all run the"
          + " same",
      "pump, which throttled alike draws the same, by the pipe alone. With --from FOLDER each size"
          + " gets",
      "its own cheapest pump of the data sheets there: the joint decision, and the only one in"
          + " which a",
      "dearer pipe can pay for itself. Where nothing is pumped the sizes are tried alone."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright pipes pond.yaml --line supply --sizes \"1-1/2 in, 2 in, 3 in\"",
      "  rillwright pipes pond.yaml --line supply --line upper --sizes \"2 in, 3 in\""
          + " --independent",
      "  rillwright pipes pond.yaml --line supply --sizes \"2 in, 3 in\" --from pumps --chart"
          + " pipes.png"
    })
public final class PipesCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Mixin private SizeArguments sizes;

  @Option(
      names = "--from",
      paramLabel = "FOLDER",
      description = "Chooses among the pump data sheets in this folder (.csv).")
  private Optional<Path> folder = Optional.empty();

  @Mixin private PumpArguments pump;

  @Mixin private TogetherArguments together;

  @Mixin private CostArguments cost;

  @Mixin private ConditionArguments conditions;

  @Mixin private DrawnReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(inputs(read));
    if (folder.isEmpty() && together.upTo() > 1) {
      throw new InvalidInput(
          Place.whole("--max-pumps"),
          "this tries several of each pump in a folder, so it needs --from FOLDER; the project's"
              + " own pump says how many it is with \"count\"");
    }
    WithTargets.require(read);
    if (pumps(read)) {
      pumped(read);
    } else {
      ofItself(read);
    }
    return ExitStatus.DONE;
  }

  private InputFiles inputs(Project read) {
    InputFiles inputs = project.inputs(read);
    return folder.map(inputs::andSheetsOf).orElse(inputs);
  }

  /** Whether a pump has to do with it: one that there is, or one that is asked for. */
  private boolean pumps(Project read) {
    return folder.isPresent()
        || pump.isGiven()
        || !PumpPlace.listChosen(read.network()).isEmpty()
        || !PumpPlace.listPlanned(read.network()).isEmpty();
  }

  private void pumped(Project read) {
    PumpPlace place = pump.placeIn(read, sizes.lines());
    OtherPumps.requireChosen(read, place);
    final double years = cost.years();
    conditions.requireFit(read, state -> ChosenPumps.requireFor(state, place));
    List<SizeOption> options = sizes.in(read);
    PipesAnswer answer =
        ask(
            new PipesRequest(
                place, options, sheets(read, place), together.upTo(), years, conditions.asked()),
            read);
    report.print(
        () -> PipesJson.of(answer),
        () -> SizesText.of(answer),
        () -> Optional.of(SizesPicture.of(answer, SizeCurves.of(answer))));
  }

  private void ofItself(Project read) {
    final double years = cost.years();
    conditions.requireFit(read, WithTargets::require);
    GravityAnswer answer = ask(new GravityRequest(sizes.in(read), years, conditions.asked()), read);
    report.print(
        () -> PipesJson.of(answer),
        () -> SizesText.of(answer),
        () -> Optional.of(GravityPicture.of(answer)));
  }

  private <A> A ask(Request<A> request, Project read) {
    try {
      return project.ask(request, read);
    } catch (SizeWithoutEffect none) {
      throw SizesJob.withoutEffect(read, none);
    }
  }

  /** The sheets to choose from; empty for the pump that is there, which must run. */
  private Optional<SheetFolder> sheets(Project read, PumpPlace place) {
    if (folder.isPresent()) {
      double density = read.network().water().densityKgPerM3();
      return Optional.of(ImpossibleSheets.without(SheetFolder.read(folder.get(), density), read));
    }
    SizesJob.requireRunning(read, place, "give --from FOLDER");
    return Optional.empty();
  }
}
