package rillwright.cli.command.argument;

import java.util.EnumSet;
import picocli.CommandLine.Option;
import rillwright.cli.report.page.terminal.Screen;
import rillwright.cli.report.page.terminal.Screen.Coloring;

/** What every command takes. */
public final class StandardOptions {
  @Option(names = "--help", usageHelp = true, description = "Shows this help and exits.")
  @SuppressWarnings("UnusedVariable") // set and read by picocli
  private boolean help;

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      converter = ColoringReader.class,
      description =
          "Prints in color: auto (default: on a terminal, unless NO_COLOR is set), always or"
              + " never.")
  private Coloring coloring = Coloring.AUTO;

  @Option(names = "--trace", description = "Shows details if the program itself fails.")
  @SuppressWarnings("UnusedVariable") // looked up among the arguments when something fails
  private boolean trace;

  /** What an answer on standard output is printed on. */
  public Screen screen() {
    return Screen.ofProcess(coloring);
  }

  /** Reads the word. */
  private static final class ColoringReader extends WordReader<Coloring> {
    ColoringReader() {
      super("coloring", EnumSet.allOf(Coloring.class));
    }
  }
}
