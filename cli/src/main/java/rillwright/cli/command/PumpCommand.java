package rillwright.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rillwright.cli.command.argument.DrawnReportArguments;
import rillwright.cli.command.argument.ShowArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Show;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.pump.FolderSheets;
import rillwright.cli.output.InputFiles;
import rillwright.cli.output.InputFiles.InputFile;
import rillwright.cli.report.json.PumpJson;
import rillwright.cli.report.picture.SheetPicture;
import rillwright.cli.report.text.sheet.PumpText;
import rillwright.cli.study.sheet.PumpSheets;
import rillwright.cli.study.sheet.SheetFigures;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.SheetWriter;
import rillwright.curves.sheet.WrittenUnits;
import rillwright.curves.sheet.fact.Nameplate;
import rillwright.curves.unit.Unit;
import rillwright.solver.water.Water;

/** What was understood of a pump's data sheet. */
@Command(
    name = "pump",
    description = {
      "Shows what was understood of a pump's data sheet.",
      "The points as published, the curve through them, its best efficiency, what is doubtful, and",
      "what a meter should read. Reads what spreadsheets export: commas, or semicolons with",
      "decimal commas."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright pump P-180.csv",
      "  rillwright pump P-180.csv --show metric --chart P-180.png",
      "  rillwright pump P-180.csv --volts 115              with the amps",
      "  rillwright pump P-180.csv --to P-180-metric.csv    writes the sheet in the other units",
      "  rillwright pump supplier/*.csv --chart list.png    several in one picture",
      "",
      "A sheet has a column of flow and one of head, each with its unit, and may have power and",
      "NPSH required:",
      "  # voltage: 115 V",
      "  # rated power: 420 W",
      "  flow [gph],head [ft],power [W],npshr [ft]",
      "  0,22,250,5",
      "  1900,20,350,6",
      "Other notes that are read: maker, price, kind, min submergence, npsh required, self"
          + " priming,",
      "variable speed, solids, power factor, phases."
    })
public final class PumpCommand implements Callable<Integer> {
  private static final String SHEET = ".csv";

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "The data sheets (.csv).")
  private List<Path> files = List.of();

  @Mixin private ShowArguments units;

  @Option(
      names = "--volts",
      paramLabel = "VOLTS",
      description = "Takes this voltage of the supply, whatever the sheet says.")
  private Optional<Double> volts = Optional.empty();

  @Mixin private DrawnReportArguments report;

  @Override
  public Integer call() {
    volts.ifPresent(PumpCommand::requireVoltage);
    report.check(
        new InputFiles(files.stream().map(file -> new InputFile(file, "a data sheet")).toList()));
    List<SheetFigures> sheets = files.stream().map(this::figures).toList();
    Show own = ownUnits(sheets.get(0).sheet());
    if (report.to().map(Path::toString).filter(PumpCommand::isSheet).isPresent()) {
      rewrite(sheets, units.show().orElse(own == Show.US ? Show.METRIC : Show.US));
      return ExitStatus.DONE;
    }
    PumpSheets answer = new PumpSheets(sheets, units.show().orElse(own));
    report.print(
        () -> PumpJson.of(answer),
        () -> PumpText.of(answer),
        () -> Optional.of(SheetPicture.of(answer)));
    return ExitStatus.DONE;
  }

  private static void requireVoltage(double volts) {
    if (!(volts > 0 && volts <= Nameplate.GREATEST_VOLTAGE_V)) {
      throw new InvalidInput(
          Place.whole("--volts"), "a supply has more than 0 and up to 1000 V, such as 115");
    }
  }

  private SheetFigures figures(Path file) {
    if (file.toString().toLowerCase(Locale.ROOT).matches(".*\\.(ya?ml|json)")) {
      throw new InvalidInput(
          Place.whole(file.toString()),
          "this is a project file; name a data sheet, for example pumps/P-180.csv");
    }
    double density = Water.at(Water.USUAL_TEMPERATURE_C).densityKgPerM3();
    DataSheet sheet = new FolderSheets(Path.of("")).read(file.toString(), density);
    Nameplate plate = sheet.facts().nameplate();
    String name = file.getFileName().toString();
    return new SheetFigures(
        isSheet(name) ? name.substring(0, name.length() - SHEET.length()) : name,
        sheet,
        volts.map(plate::on).orElse(plate),
        density);
  }

  private static boolean isSheet(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(SHEET);
  }

  /** The units that a sheet's flows are written in. */
  private static Show ownUnits(DataSheet sheet) {
    return sheet.units().filter(WrittenUnits::isMetric).isPresent() ? Show.METRIC : Show.US;
  }

  private void rewrite(List<SheetFigures> sheets, Show show) {
    if (sheets.size() > 1 || report.asksForAForm()) {
      throw new InvalidInput(
          Place.whole("--to"),
          sheets.size() > 1
              ? "this writes one data sheet again; name one"
              : "a name that ends in .csv asks for the data sheet itself; leave --format out");
    }
    SheetWriter writer =
        show == Show.METRIC
            ? new SheetWriter(Unit.CUBIC_METRE_PER_HOUR, Unit.METRE, Unit.MILLIMETRE)
            : new SheetWriter(Unit.GALLON_PER_HOUR, Unit.FOOT, Unit.INCH);
    report.drawOnly(SheetPicture.of(new PumpSheets(sheets, show)));
    report.print(writer.write(sheets.get(0).sheet()));
  }
}
