package rillwright.cli.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.command.argument.ConditionArguments;
import rillwright.cli.command.argument.DrawnReportArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.WithBasin;
import rillwright.cli.report.json.CasesJson;
import rillwright.cli.report.json.StreamJson;
import rillwright.cli.report.picture.ConditionLevelsPicture;
import rillwright.cli.report.picture.LevelsPicture;
import rillwright.cli.report.text.stream.StreamConditionsText;
import rillwright.cli.report.text.stream.StreamText;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.condition.InConditions;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.cli.study.stream.StreamRequest;
import rillwright.cli.study.stream.StreamRequest.Follow;

/** Depth and speed in each reach, water in transit, how far the pond falls and rises. */
@Command(
    name = "stream",
    description = {
      "Finds depths and speeds of the stream and the pond's levels.",
      "It shows how deep and fast the water runs in each reach, how much is in transit, how far",
      "the pond falls while the stream fills, whether the skimmer still feeds the pump, how far",
      "it rises when the pump stops, and in how many days evaporation starves the skimmer."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright stream pond.yaml",
      "  rillwright stream pond.yaml --chart levels.png   levels and flows from start to stop",
      "  rillwright stream pond.yaml --conditions         in autumn, with a low pond ...",
      "  rillwright stream pond.yaml --set \"lines.intake.skimmer.sill=-7 in\"",
      "  rillwright stream pond.yaml --format json        for programs, in SI units"
    })
public final class StreamCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Option(
      names = "--times",
      description =
          "Follows levels and flows from switch-on to rest after switch-off; a picture always"
              + " does.")
  private boolean times;

  @Mixin private ConditionArguments conditions;

  @Mixin private DrawnReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(project.inputs(read));
    ChosenPumps.require(read);
    WithBasin.require(read);
    boolean follows = times || report.draws();
    if (follows) {
      WithBasin.requireShapes(read);
    }
    StreamRequest request = new StreamRequest(follows ? Follow.START_AND_STOP : Follow.NO);
    return conditions.areAsked() ? inConditions(read, request) : asWritten(read, request);
  }

  private int inConditions(Project read, StreamRequest request) {
    if (times) {
      throw new InvalidInput(
          Place.whole("--times"),
          "this follows the file as written; for a condition make its change with --set, or"
              + " let --chart draw all of them");
    }
    conditions.requireFit(read, ChosenPumps::require);
    Cases<StreamAnswer> answer = project.ask(new InConditions<>(request, conditions.names()), read);
    report.print(
        () -> CasesJson.ofStreams(answer),
        () -> StreamConditionsText.of(answer),
        () -> ConditionLevelsPicture.of(answer));
    return answer.lacksEveryBalance() ? ExitStatus.NO_BALANCE : ExitStatus.DONE;
  }

  private int asWritten(Project read, StreamRequest request) {
    StreamAnswer answer = project.ask(request, read);
    report.print(
        () -> StreamJson.of(answer),
        () -> StreamText.of(answer),
        () -> answer.course().map(course -> LevelsPicture.of(answer)));
    return ExitStatus.DONE;
  }
}
