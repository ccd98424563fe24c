package rillwright.cli.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.report.json.StreamJson;
import rillwright.cli.report.stream.StreamAnswer;
import rillwright.cli.report.text.Ink;
import rillwright.cli.report.text.stream.StreamText;
import rillwright.solver.stream.StreamBudgetFinder;

/** Depth and speed in each reach, water in transit, how far the pond falls and rises. */
@Command(
    name = "stream",
    description = {
      "Tells how deep and fast the water runs in each reach, how much of it is on its way home, how",
      "far the pond falls while the stream fills and whether the skimmer still drinks then, how far",
      "it rises when the pump stops, and in how many days evaporation starves the skimmer."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright stream pond.yaml",
      "  rillwright stream pond.yaml --chart levels.png   levels and flows from start to stop",
      "  rillwright stream pond.yaml --set \"lines.intake.skimmer.sill=-7 in\"",
      "  rillwright stream pond.yaml --format json        for a program, in SI units"
    })
public final class StreamCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ProjectArguments project;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.Reader.class,
      description = "text (default) or json.")
  private Format format = Format.TEXT;

  @Mixin
  @SuppressWarnings("UnusedVariable") // read by picocli
  private StandardOptions standard;

  @Override
  public Integer call() {
    Project read = project.read();
    ChosenPumps.require(read);
    requireWater(read);
    StreamAnswer answer =
        new StreamAnswer(
            read.title(),
            Shown.of(read),
            project.changes(),
            StreamBudgetFinder.find(read.streams()));
    String report =
        format == Format.JSON ? StreamJson.of(answer) : StreamText.of(answer, Ink.ofTerminal());
    spec.commandLine().getOut().print(report);
    spec.commandLine().getOut().flush();
    return ExitStatus.DONE;
  }

  private static void requireWater(Project project) {
    boolean basin =
        project.network().points().stream().anyMatch(point -> point.kind().equals("basin"));
    if (!basin) {
      throw new InvalidInput(
          project.places().whole(),
          "no basin is in the file, so no level can fall or rise; write for example \"pond: {kind:"
              + " basin, level: 0 ft, area: 200 ft2}\"");
    }
  }
}
