package rillwright.cli.command.argument;

import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rillwright.cli.file.Show;
import rillwright.curves.wording.PlainText;

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
  static final class Reader implements ITypeConverter<Show> {
    @Override
    public Show convert(String written) {
      return switch (written) {
        case "us" -> Show.US;
        case "metric" -> Show.METRIC;
        default ->
            throw new TypeConversionException(
                "unknown units " + PlainText.quoted(written) + "; choose us or metric");
      };
    }
  }
}
