package rillwright.cli.command.argument;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rillwright.curves.wording.Listing;
import rillwright.curves.wording.PlainText;

/** In which form a command answers. */
public enum Format {
  /** For people at a terminal. */
  TEXT,
  /** For people with a browser or printer. */
  HTML,
  /** For programs. */
  JSON,
  /** For spreadsheets. */
  CSV;

  private String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Reads the word for a format that a command knows. */
  private static class Reader implements ITypeConverter<Format> {
    private final Set<Format> known;

    Reader(Set<Format> known) {
      this.known = known;
    }

    @Override
    public Format convert(String written) {
      List<String> words = known.stream().map(Format::word).toList();
      return known.stream()
          .filter(format -> format.word().equals(written))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "unknown format "
                          + PlainText.quoted(written)
                          + "; choose "
                          + Listing.either(words)));
    }
  }

  /** Of an answer. */
  public static final class OfAnswers extends Reader {
    OfAnswers() {
      super(EnumSet.of(TEXT, HTML, JSON));
    }
  }

  /** Of a picture, reported in words or points. */
  public static final class OfPictures extends Reader {
    OfPictures() {
      super(EnumSet.of(TEXT, JSON));
    }
  }

  /** Of what people alone read. */
  public static final class OfPages extends Reader {
    OfPages() {
      super(EnumSet.of(TEXT, HTML));
    }
  }

  /** Of tables. */
  public static final class OfTables extends Reader {
    OfTables() {
      super(EnumSet.allOf(Format.class));
    }
  }
}
