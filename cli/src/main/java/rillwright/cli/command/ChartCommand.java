package rillwright.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.Format;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.PumpArguments;
import rillwright.cli.command.argument.StandardOptions;
import rillwright.cli.command.need.OtherPumps;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.command.output.PictureFile;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.report.json.ChartJson;
import rillwright.cli.report.picture.OperatingPicture;
import rillwright.cli.report.picture.OperatingPicture.Power;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.study.curve.Curves;
import rillwright.cli.study.curve.CurvesRequest;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.wording.PlainText;
import rillwright.solver.pumping.PumpPlace;

/** The pump curve over the system curve, as a picture. */
@Command(
    name = "chart",
    description = {
      "Draws the pump curve over the system curve.",
      "The system curve is solved at each flow, so it shows where a second fall begins to run or",
      "a check valve opens. With a pump still to be chosen, it shows the duty instead."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright chart pond.yaml                    writes pond.png beside the file",
      "  rillwright chart pond.yaml --to curves.svg --power",
      "  rillwright chart pond.yaml --format json      the points, for programs; a picture with"
          + " --to"
    })
public final class ChartCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Mixin private PumpArguments pump;

  @Option(
      names = "--to",
      paramLabel = "PICTURE",
      description = "Writes this file, .png or .svg; default: the project's name with .png.")
  private Optional<Path> to = Optional.empty();

  @Option(names = "--power", description = "Draws the power too.")
  private boolean power;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.OfPictures.class,
      description = "Output format: text (default) or json.")
  private Format format = Format.TEXT;

  @Spec private CommandSpec spec;

  @Mixin
  @SuppressWarnings("UnusedVariable") // read by picocli
  private StandardOptions standard;

  @Override
  public Integer call() {
    Project read = project.read();
    PictureFile picture = new PictureFile(to.orElseGet(this::besideTheProject));
    boolean draws = format != Format.JSON || to.isPresent();
    if (to.isEmpty() && draws) {
      picture.refuseUnasked();
    }
    if (draws) {
      picture.check(project.inputs(read));
    }
    PumpPlace place = pump.placeIn(read);
    OtherPumps.requireChosen(read, place);
    Curves curves = project.ask(new CurvesRequest(place), read);
    requireCurve(read, curves);
    if (format == Format.JSON) {
      to.ifPresent(path -> picture.write(chart(curves)));
      print(ChartJson.of(curves));
    } else {
      OperatingChart chart = chart(curves);
      picture.write(chart);
      print(shown(chart, picture.path(), read.changes()));
    }
    return ExitStatus.DONE;
  }

  private static void requireCurve(Project read, Curves curves) {
    if (curves.pump().isEmpty() && curves.system().points().isEmpty()) {
      throw new InvalidInput(
          read.places().ofPart(curves.place().line(), curves.place().partIndex()),
          "there is no curve to draw: no water can flow through this pump; check for shut valves,"
              + " clogged filters and stopped pumps in its line");
    }
  }

  private OperatingChart chart(Curves curves) {
    return OperatingPicture.of(curves, power ? Power.SHOWN : Power.LEFT_OUT);
  }

  private Path besideTheProject() {
    String name = project.file().getFileName().toString();
    int dot = name.lastIndexOf('.');
    return project.file().resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".png");
  }

  private void print(String answer) {
    spec.commandLine().getOut().print(answer);
    spec.commandLine().getOut().flush();
  }

  private static String shown(OperatingChart chart, Path path, List<String> changes) {
    StringBuilder shown = new StringBuilder();
    changes.forEach(
        change -> shown.append(PlainText.harmless(ChangedWords.of(change))).append('\n'));
    chart.operatingPoints().stream()
        .map(point -> PlainText.harmless(String.join(", ", point.labelLines())))
        .forEach(line -> shown.append(line).append('\n'));
    return shown
        .append("Picture: ")
        .append(PlainText.harmless(path.toString()))
        .append('\n')
        .toString();
  }
}
