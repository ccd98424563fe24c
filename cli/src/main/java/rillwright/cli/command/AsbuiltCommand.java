package rillwright.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.command.argument.NewProjectArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.command.output.PictureFile;
import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.cli.file.edit.EditedText;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.Unknowns;
import rillwright.cli.output.InputFiles;
import rillwright.cli.output.OutputFile;
import rillwright.cli.report.json.AsbuiltJson;
import rillwright.cli.report.picture.LearntPumpPicture;
import rillwright.cli.report.text.asbuilt.AsbuiltText;
import rillwright.cli.report.text.asbuilt.LearntChanges;
import rillwright.cli.study.asbuilt.AsbuiltAnswer;
import rillwright.cli.study.asbuilt.AsbuiltRequest;
import rillwright.cli.study.asbuilt.LearntPump;
import rillwright.cli.study.asbuilt.NothingFits;
import rillwright.curves.chart.content.BandChart;
import rillwright.curves.sheet.SheetWriter;
import rillwright.curves.unit.Unit;

/** What the readings at start-up say of what was not known exactly. */
@Command(
    name = "asbuilt",
    description = {
      "Finds what readings say of what was not known exactly.",
      "What the file gives as a tolerance or a range (\"run: 38 ft ± 4 ft\", \"clogged: 0 %% .. 40"
          + " %%\")",
      "is narrowed by what was read, assuming that nothing is wrong: each quantity and the flow of"
          + " each",
      "fall with its low (5 %%), median and high (95 %%) value, readings that disagree, and the",
      "reading that would narrow the flows most. --to writes a new project file from which",
      "\"solve\", \"odds\" and next year's \"weak\" start."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright asbuilt pond.yaml",
      "  rillwright asbuilt pond.yaml --readings on-the-day.yaml --to pond-as-built.yaml",
      "  rillwright asbuilt pond.yaml --pump-sheet old-pump.csv --chart old-pump.png",
      "                                                               a pump that was unknown",
      "  rillwright asbuilt pond.yaml --format html > as-built.html",
      "",
      "Readings are written as for \"weak\"; \"sheet --readings\" writes the list to fill in."
    })
public final class AsbuiltCommand implements Callable<Integer> {
  private static final String LEARNT =
      "learnt by readings on site, the middle of a band; no data sheet of its maker";

  private static final String UNKNOWN =
      "{unknown: {shut-off: 4 m .. 12 m, runs out: 5 m3/h .. 25 m3/h}}";

  @Mixin private ProjectArguments project;

  @Option(
      names = "--readings",
      paramLabel = "READINGS",
      description = "Takes readings from this file instead of the project's.")
  private Optional<Path> readings = Optional.empty();

  @Option(
      names = "--pump-sheet",
      paramLabel = "SHEET",
      description = "Writes the curve of the unknown pump as a data sheet, .csv.")
  private Optional<Path> pumpSheet = Optional.empty();

  @Option(
      names = "--chart",
      paramLabel = "PICTURE",
      description = "Draws the curve of an unknown pump over what was read, .png or .svg.")
  private Optional<Path> chart = Optional.empty();

  @Mixin private NewProjectArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    InputFiles inputs = project.inputs(read).and(readings, "the file of readings");
    report.check(inputs);
    sheetFile().ifPresent(file -> file.check(inputs.and(report.project(), "the new project file")));
    picture().ifPresent(file -> file.check(inputs.and(report.project(), "the new project file")));
    ChosenPumps.require(read, "; an existing job has a pump, so name it here");
    Unknowns.requireForReadings(read);
    Visit visit =
        readings
            .map(file -> VisitReader.inFile(file, read.network()))
            .orElseGet(() -> VisitReader.inProject(read));
    requireReadings(read, visit);
    AsbuiltAnswer answer = answer(read, visit);
    Optional<String> sheet = sheetFile().map(file -> sheet(answer, read));
    Optional<BandChart> drawn = picture().map(file -> requirePicture(answer));
    sheetFile().ifPresent(it -> it.write(sheet.orElseThrow().getBytes(StandardCharsets.UTF_8)));
    picture().ifPresent(file -> file.write(drawn.orElseThrow()));
    report.write(() -> learnt(answer));
    report.print(
        () -> AsbuiltJson.of(answer),
        () -> AsbuiltText.of(answer),
        () -> LearntPumpPicture.of(answer));
    return ExitStatus.DONE;
  }

  private Optional<PictureFile> picture() {
    return chart.map(PictureFile::new);
  }

  private static BandChart requirePicture(AsbuiltAnswer answer) {
    return LearntPumpPicture.of(answer)
        .orElseThrow(
            () ->
                new InvalidInput(
                    Place.whole("--chart"),
                    "this draws the curve of an unknown pump, and every pump of the file has its"
                        + " data sheet; remove --chart, or write the pump as "
                        + UNKNOWN));
  }

  private AsbuiltAnswer answer(Project read, Visit visit) {
    try {
      return project.ask(new AsbuiltRequest(Optional.of(visit)), read);
    } catch (NothingFits nothing) {
      throw Unknowns.nothingFits(read);
    }
  }

  private Optional<OutputFile> sheetFile() {
    return pumpSheet.map(path -> new OutputFile(path, "data sheet"));
  }

  private static String sheet(AsbuiltAnswer answer, Project read) {
    if (answer.pumps().size() != 1) {
      throw new InvalidInput(
          Place.whole("--pump-sheet"),
          "this writes the curve of the one unknown pump, and the file has "
              + answer.pumps().size()
              + "; write it as "
              + UNKNOWN);
    }
    LearntPump pump = answer.pumps().get(0);
    return writer(read.show()).write(pump.sheet(read.sheets().get(pump.name()), LEARNT));
  }

  private static SheetWriter writer(Show show) {
    return show == Show.METRIC
        ? new SheetWriter(Unit.CUBIC_METRE_PER_HOUR, Unit.METRE, Unit.MILLIMETRE)
        : new SheetWriter(Unit.GALLON_PER_HOUR, Unit.FOOT, Unit.INCH);
  }

  private String learnt(AsbuiltAnswer answer) {
    EditedText text = EditedText.of(SourceText.read(project.file()));
    List<String> changes = new ArrayList<>(project.changes());
    changes.addAll(LearntChanges.of(answer));
    for (String change : changes) {
      text = text.set(change);
    }
    return text.text();
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
