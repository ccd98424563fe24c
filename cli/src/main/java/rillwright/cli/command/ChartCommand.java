package rillwright.cli.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.command.argument.PictureArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.PumpArguments;
import rillwright.cli.command.argument.StandardOptions;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.command.output.PictureFile;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.need.OtherPumps;
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
      "  rillwright chart pond.yaml --format json      the points, for programs"
    })
public final class ChartCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Mixin private PumpArguments pump;

  @Option(names = "--power", description = "Draws the power too.")
  private boolean power;

  @Mixin private PictureArguments picture;

  @Mixin
  @SuppressWarnings("UnusedVariable") // read by picocli
  private StandardOptions standard;

  @Override
  public Integer call() {
    Project read = project.read();
    Optional<PictureFile> file = picture.check(project.file(), "", project.inputs(read));
    PumpPlace place = pump.placeIn(read);
    OtherPumps.requireChosen(read, place);
    Curves curves = project.ask(new CurvesRequest(place), read);
    requireCurve(read, curves);
    OperatingChart chart = OperatingPicture.of(curves, power ? Power.SHOWN : Power.LEFT_OUT);
    picture.print(
        file, () -> chart, () -> ChartJson.of(curves), () -> shown(chart, read.changes()));
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

  private static String shown(OperatingChart chart, List<String> changes) {
    StringBuilder shown = new StringBuilder();
    changes.forEach(
        change -> shown.append(PlainText.harmless(ChangedWords.of(change))).append('\n'));
    chart.operatingPoints().stream()
        .map(point -> PlainText.harmless(String.join(", ", point.labelLines())))
        .forEach(line -> shown.append(line).append('\n'));
    return shown.toString();
  }
}
