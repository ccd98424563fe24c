package rillwright.cli.command.argument;

import java.util.EnumSet;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
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
  private Optional<Coloring> coloring = Optional.empty();

  @Option(names = "--trace", description = "Shows details if the program itself fails.")
  @SuppressWarnings("UnusedVariable") // looked up among the arguments when something fails
  private boolean trace;

  /**
   * What an answer of a command on standard output is printed on. Its color may be asked for before
   * the command too.
   */
  public Screen screen(CommandSpec command) {
    Optional<Coloring> before = command.root().findOption("--color").getValue();
    return Screen.ofProcess(coloring.or(() -> before).orElse(Coloring.AUTO));
  }

  /** Reads the word. */
  private static final class ColoringReader extends WordReader<Coloring> {
    ColoringReader() {
      super("coloring", EnumSet.allOf(Coloring.class));
    }
  }
}
