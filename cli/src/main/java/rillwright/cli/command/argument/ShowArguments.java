package rillwright.cli.command.argument;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import rillwright.cli.file.Show;

/** In which units a command shows what no project file says. */
public final class ShowArguments {
  @Option(
      names = "--show",
      paramLabel = "UNITS",
      converter = Reader.class,
      description = "Shows us or metric units.")
  private Optional<Show> show = Optional.empty();

  /** The units asked for. */
  public Optional<Show> show() {
    return show;
  }

  /** The word for a kind of units. */
  public static String word(Show show) {
    return show.name().toLowerCase(Locale.ROOT);
  }

  /** Reads the word for a kind of units. */
  static final class Reader extends WordReader<Show> {
    Reader() {
      super("units", EnumSet.allOf(Show.class));
    }
  }
}
