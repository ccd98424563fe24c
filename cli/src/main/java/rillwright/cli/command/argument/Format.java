package rillwright.cli.command.argument;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;

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
  private static final Set<String> OTHER_FORMS =
      Set.of("pdf", "doc", "docx", "odt", "rtf", "xls", "xlsx", "ods", "png", "svg", "jpg");

  /** The form that a file's ending asks for; another if it asks for none. */
  public static Format ofFile(Path file, Format otherwise) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".json")
        ? JSON
        : name.endsWith(".html") ? HTML : name.endsWith(".txt") ? TEXT : otherwise;
  }

  /**
   * Refuses a file whose ending promises what no answer is written as.
   *
   * @throws InvalidInput with the endings that there are
   */
  static void requireWritten(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    if (name.contains(".") && OTHER_FORMS.contains(name.substring(name.lastIndexOf('.') + 1))) {
      throw new InvalidInput(
          Place.whole(file.toString()),
          "an answer is not written in this form; end the name in .html, which a browser prints"
              + " (also into a PDF), in .txt or in .json");
    }
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
