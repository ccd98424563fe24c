package rillwright.cli.command.weak;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.command.argument.DrawnReportArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.visit.PriorsReader;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.WeakJob;
import rillwright.cli.report.json.CausesJson;
import rillwright.cli.report.json.WeakJson;
import rillwright.cli.report.picture.CausesPicture;
import rillwright.cli.report.text.weak.CausesText;
import rillwright.cli.report.text.weak.WeakText;
import rillwright.cli.study.weak.BuiltJob;
import rillwright.cli.study.weak.CausesAnswer;
import rillwright.cli.study.weak.CausesRequest;
import rillwright.cli.study.weak.NothingExplains;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.cli.study.weak.WeakRequest;
import rillwright.solver.study.diagnosis.inference.Diagnostician.Sizes;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** Which faults explain what was read at a weak fall, and what to read next. */
@Command(
    name = "weak",
    description = {
      "Finds the causes that explain the readings at a weak fall.",
      "It lists likely causes, how likely each is, which reading separates them, and what to",
      "read next. The file describes the job as it was built; its sections \"readings\" and",
      "\"signs\" say what was read and seen."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright weak pond.yaml",
      "  rillwright weak pond.yaml --readings today.yaml --chart today.png",
      "  rillwright weak pond.yaml --causes           possible causes, and how likely each is at"
          + " first",
      "  rillwright weak pond.yaml --causes --format json > priors.json",
      "  rillwright weak pond.yaml --priors priors.json",
      "",
      "Readings, each with \"within\": how far off it may be either way, in 19 of 20 cases:",
      "  readings:",
      "    - {at: upper fall, bucket: 5 gal, time: 8.6 s, within: 7 %%}",
      "    - {at: upper fall, crest head: 0.55 in, within: 0.08 in}",
      "    - {gauge: G1, pressure: 13.3 psi, within: 0.25 psi, when: valve shut, valve: supply}",
      "    - {gauge: G2, pressure: 1.7 psi, within: 0.25 psi, when: pump off}",
      "    - {pump: supply, power: 310 W, within: 5 %%}",
      "    - {at: chamber, below pond: 2 in}",
      "    - {line: supply, flow: 2300 gph, within: 5 %%}          a meter clamped on the pipe",
      "    - {at: chamber, drops: 1.6 in, in: 6 s}",
      "      (its mouth shut by a board, never a hand; hands and hair clear of the suction)",
      "    - {look: net, at: intake, seen: dirty}                  a look; more in \"help"
          + " readings\"",
      "    - {look: handle, at: supply, seen: 40 deg}              from open",
      "  signs: [for weeks, better after restart]"
    })
public final class WeakCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Option(
      names = "--readings",
      paramLabel = "READINGS",
      description = "Takes readings and signs from this file instead of the project's.")
  private Optional<Path> readings = Optional.empty();

  @Option(
      names = "--causes",
      description =
          "Lists the causes of this job with their sizes, how likely each is before any reading"
              + " (its prior), and the effect of signs.")
  private boolean causesOnly;

  @Option(
      names = "--priors",
      paramLabel = "PRIORS",
      description =
          "Takes causes and signs from this file, as --causes --format json prints them; the priors"
              + " are scaled to a sum of 1.")
  private Optional<Path> priors = Optional.empty();

  @Option(
      names = "--include-slight",
      description =
          "Includes causes that take less than a tenth off every fall, too little to be reported.")
  private boolean notCalled;

  @Mixin private DrawnReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(
        project
            .inputs(read)
            .and(readings, "the file of readings")
            .and(priors, "the file of priors"));
    if (causesOnly && report.draws()) {
      throw new InvalidInput(
          Place.whole("--chart"),
          "--chart draws the result of readings and --causes uses none; remove one of the two");
    }
    ChosenPumps.require(read, "; an existing job has a pump, so name it here");
    AsBuilt built = project.ask((it, unseen) -> BuiltJob.of(it), read);
    CausesRequest causes =
        new CausesRequest(priors.map(file -> PriorsReader.read(file, CausesRequest.usual(built))));
    if (causesOnly) {
      CausesAnswer answer = project.ask(causes, read);
      report.print(() -> CausesJson.of(answer), () -> CausesText.of(answer));
    } else {
      WeakAnswer answer = answer(read, built, causes);
      report.print(
          () -> WeakJson.of(answer),
          () -> WeakText.of(answer),
          () -> Optional.of(CausesPicture.of(answer)));
    }
    return ExitStatus.DONE;
  }

  private WeakAnswer answer(Project read, AsBuilt built, CausesRequest causes) {
    WeakJob weakJob = new WeakJob(read, built, "give --include-slight");
    weakJob.requireFlow();
    Visit visit =
        readings
            .map(file -> VisitReader.inFile(file, read.network()))
            .orElseGet(() -> VisitReader.inProject(read));
    if (!notCalled) {
      weakJob.requireCall(visit);
    }
    Sizes sizes = notCalled ? Sizes.ALL : Sizes.CALLED_FOR;
    try {
      return project.ask(new WeakRequest(Optional.of(visit), causes, sizes), read);
    } catch (NothingExplains nothing) {
      throw weakJob.unexplained(priors);
    }
  }
}
