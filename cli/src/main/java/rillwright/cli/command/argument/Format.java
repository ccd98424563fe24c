package rillwright.cli.command.argument;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Locale;

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

  private static final String FORMAT = "format";

  /** The form that a file's ending asks for; another if it asks for none. */
  public static Format ofFile(Path file, Format otherwise) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".json")
        ? JSON
        : name.endsWith(".html") ? HTML : name.endsWith(".txt") ? TEXT : otherwise;
  }

  /** Of an answer. */
  public static final class OfAnswers extends WordReader<Format> {
    OfAnswers() {
      super(FORMAT, EnumSet.of(TEXT, HTML, JSON));
    }
  }

  /** Of a picture, reported in words or points. */
  public static final class OfPictures extends WordReader<Format> {
    OfPictures() {
      super(FORMAT, EnumSet.of(TEXT, JSON));
    }
  }

  /** Of what people alone read. */
  public static final class OfPages extends WordReader<Format> {
    OfPages() {
      super(FORMAT, EnumSet.of(TEXT, HTML));
    }
  }

  /** Of tables. */
  public static final class OfTables extends WordReader<Format> {
    OfTables() {
      super(FORMAT, EnumSet.allOf(Format.class));
    }
  }
}
