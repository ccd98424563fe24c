package rillwright.cli.command;

import java.util.Arrays;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;

/** In which form a command answers. */
public enum Format {
  /** For people. */
  TEXT("text"),
  /** For programs. */
  JSON("json");

  private final String word;

  Format(String word) {
    this.word = word;
  }

  /** Reads the word for a format. */
  static final class Reader implements ITypeConverter<Format> {
    @Override
    public Format convert(String written) {
      for (Format format : values()) {
        if (format.word.equals(written)) {
          return format;
        }
      }
      List<String> words = Arrays.stream(values()).map(format -> format.word).toList();
      throw new TypeConversionException(
          PlainText.quoted(written) + " is no format" + Choices.hint(written, words));
    }
  }
}
