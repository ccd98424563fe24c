package rillwright.cli.command.jobsheet;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rillwright.cli.command.argument.CostArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.file.job.PhotoFolder;
import rillwright.cli.output.InputFiles;
import rillwright.cli.output.OutputFile;
import rillwright.cli.report.json.SheetJson;
import rillwright.cli.report.text.jobsheet.Audience;
import rillwright.cli.report.text.jobsheet.MaterialsCsv;
import rillwright.cli.report.text.jobsheet.ReadingsYaml;
import rillwright.cli.report.text.jobsheet.SheetText;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.cli.study.jobsheet.SheetRequest;
import rillwright.curves.wording.PlainText;

/** The job sheet: what the crew and the customer hold in their hands. */
@Command(
    name = "sheet",
    description = {
      "Writes the job sheet: one HTML page to print or open on a phone.",
      "It has falls, pumps, valve settings with their handles, stream and levels, findings,",
      "trench, materials, running cost, and a card for the readings at start-up. Valves that are",
      "marked adjustable are set as \"balance\" says (as \"balance --target\" where a fall would"
          + " get",
      "more than 125 %% of its target); the figures are those of the project so set, the remedies",
      "those of \"mend\". With a pump still to be chosen the sheet has its duty and no readings.",
      "A project without a balanced state has no sheet (exit status 3)."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright sheet pond.yaml --to job.html",
      "  rillwright sheet pond.yaml --for crew --to crew.html           trench, parts, settings,"
          + " card",
      "  rillwright sheet pond.yaml --for customer --to customer.html   no jargon",
      "  rillwright sheet pond.yaml --for lid --to lid.html             cards of A6 size",
      "  rillwright sheet pond.yaml --materials list.csv --readings readings.yaml",
      "  rillwright sheet pond.yaml --format json                       for programs, in SI units",
      "",
      "The file may name \"job: {firm: ..., customer: ..., address: ..., date: 2026-05-14}\","
          + " and at",
      "points and lines \"note\" and \"photo\" (JPEG or PNG in the project's folder)."
    })
public final class SheetCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Option(
      names = "--for",
      paramLabel = "WHOM",
      converter = Reader.class,
      description = "For crew, customer or lid (cards for the pump's lid and the valve box).")
  private Optional<Audience> audience = Optional.empty();

  @Option(
      names = "--materials",
      paramLabel = "LIST",
      description = "Writes the materials to this file too, .csv.")
  private Optional<Path> materials = Optional.empty();

  @Option(
      names = "--readings",
      paramLabel = "READINGS",
      description =
          "Writes the readings of the card to this file too, .yaml, to be filled in for \"weak"
              + " --readings\".")
  private Optional<Path> readings = Optional.empty();

  @Mixin private CostArguments cost;

  @Mixin private SheetArguments output;

  /** Reads for whom it is. */
  static final class Reader implements ITypeConverter<Audience> {
    @Override
    public Audience convert(String written) {
      return Audience.find(written)
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "unknown reader "
                          + PlainText.quoted(written)
                          + "; choose crew, customer or lid"));
    }
  }

  @Override
  public Integer call() {
    Project read = project.read();
    InputFiles taken = project.inputs(read);
    output.check(taken);
    taken = taken.and(output.to(), "the sheet");
    Optional<OutputFile> list = file(materials, "list of materials", taken);
    taken = taken.and(materials, "the list of materials");
    Optional<OutputFile> card = file(readings, "list of readings", taken);
    SheetAnswer answer = project.ask(new SheetRequest(cost.years()), read);
    PhotoFolder photos = new PhotoFolder(project.file().resolveSibling(""));
    output.print(() -> SheetJson.of(answer), () -> SheetText.of(answer, audience, photos::base64));
    list.ifPresent(file -> write(file, MaterialsCsv.of(answer.materials(), Shown.of(answer))));
    card.ifPresent(file -> write(file, ReadingsYaml.of(answer)));
    return ExitStatus.DONE;
  }

  private static Optional<OutputFile> file(Optional<Path> path, String what, InputFiles taken) {
    Optional<OutputFile> file = path.map(it -> new OutputFile(it, what));
    file.ifPresent(it -> it.check(taken));
    return file;
  }

  private void write(OutputFile file, String text) {
    file.write(text.getBytes(StandardCharsets.UTF_8));
    output.alsoWritten(file);
  }
}
