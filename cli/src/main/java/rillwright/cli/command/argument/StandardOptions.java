package rillwright.cli.command.argument;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rillwright.cli.report.page.terminal.Screen;
import rillwright.cli.report.page.terminal.Screen.Coloring;
import rillwright.curves.wording.Listing;
import rillwright.curves.wording.PlainText;

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
  private static final class ColoringReader implements ITypeConverter<Coloring> {
    @Override
    public Coloring convert(String written) {
      List<String> words =
          Arrays.stream(Coloring.values()).map(it -> it.name().toLowerCase(Locale.ROOT)).toList();
      if (!words.contains(written)) {
        throw new TypeConversionException(
            PlainText.quoted(written) + " is not known here; choose " + Listing.either(words));
      }
      return Coloring.valueOf(written.toUpperCase(Locale.ROOT));
    }
  }
}
