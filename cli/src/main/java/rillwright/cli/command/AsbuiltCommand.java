package rillwright.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.command.argument.NewProjectArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.need.ChosenPumps;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.file.UncertainQuantities;
import rillwright.cli.file.edit.EditedText;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.report.json.AsbuiltJson;
import rillwright.cli.report.text.asbuilt.AsbuiltText;
import rillwright.cli.study.asbuilt.AsbuiltAnswer;
import rillwright.cli.study.asbuilt.AsbuiltRequest;
import rillwright.cli.study.asbuilt.LearntText;
import rillwright.cli.study.asbuilt.NothingFits;

/** What the readings at start-up say of what was not known exactly. */
@Command(
    name = "asbuilt",
    description = {
      "Finds what readings say of what was not known exactly.",
      "What the file gives as a tolerance or a range (\"run: 38 ft ± 4 ft\", \"clogged: 0 %% .. 40"
          + " %%\")",
      "is narrowed by what was read, nothing supposed wrong: each quantity and the flow of each",
      "fall with its median and its 5th and 95th percentile, readings that disagree, and the",
      "reading that would narrow the flows most. --to writes a new project file from which",
      "\"solve\", \"odds\" and next year's \"weak\" start."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright asbuilt pond.yaml",
      "  rillwright asbuilt pond.yaml --readings last-day.yaml --to pond-as-built.yaml",
      "  rillwright asbuilt pond.yaml --format html > as-built.html",
      "",
      "Readings are written as for \"weak\"; \"sheet --readings\" writes the list to fill in."
    })
public final class AsbuiltCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Option(
      names = "--readings",
      paramLabel = "READINGS",
      description = "Takes readings from this file instead of the project's.")
  private Optional<Path> readings = Optional.empty();

  @Mixin private NewProjectArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(project.inputs(read).and(readings, "the file of readings"));
    ChosenPumps.require(read, "; an existing job has a pump, so name it here");
    requireUnknown(read);
    Visit visit =
        readings
            .map(file -> VisitReader.inFile(file, read.network()))
            .orElseGet(() -> VisitReader.inProject(read));
    requireReadings(read, visit);
    AsbuiltAnswer answer = answer(read, visit);
    report.write(() -> learnt(answer));
    report.print(() -> AsbuiltJson.of(answer), () -> AsbuiltText.of(answer), Optional::empty);
    return ExitStatus.DONE;
  }

  private AsbuiltAnswer answer(Project read, Visit visit) {
    try {
      return project.ask(new AsbuiltRequest(Optional.of(visit)), read);
    } catch (NothingFits nothing) {
      throw new InvalidInput(
          read.places().whole(),
          "nothing within the ranges of this file gives a reading where these were taken: look at"
              + " the ranges, and at where the readings were taken");
    }
  }

  private String learnt(AsbuiltAnswer answer) {
    EditedText text = EditedText.of(SourceText.read(project.file()));
    for (String change : project.changes()) {
      text = text.set(change);
    }
    return LearntText.of(text, answer).text();
  }

  private static void requireUnknown(Project project) {
    if (new UncertainQuantities(project).inTheNetwork().isEmpty()) {
      throw new InvalidInput(
          project.places().whole(),
          "every value in the network is exact here, so there is nothing to learn; write what is"
              + " not known as a tolerance or a range, for example \"run: 38 ft ± 4 ft\" (or \"38"
              + " ft +- 4 ft\"), \"roughness: 0.002 mm .. 0.3 mm\", \"clogged: 0 % .. 40 %\"");
    }
  }

  private void requireReadings(Project project, Visit visit) {
    if (visit.placed().isEmpty()) {
      throw new InvalidInput(
          readings.map(file -> Place.whole(file.toString())).orElse(project.places().whole()),
          "there are no readings to learn from; write them under \"readings\", for example {at:"
              + " upper fall, bucket: 5 gal, time: 8.6 s} (\"sheet --readings\" writes the list to"
              + " fill in)");
    }
  }
}
