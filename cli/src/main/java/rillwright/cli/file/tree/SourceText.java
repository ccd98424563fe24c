package rillwright.cli.file.tree;

import java.nio.file.Path;
import java.util.Locale;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.curves.sheet.text.Utf8Text;

/**
 * The text of a project file.
 *
 * @param name the file as the user named it
 * @param text its content without a byte-order mark
 */
public record SourceText(String name, String text) {

  /**
   * Reads a file.
   *
   * @throws InvalidInput if it is missing, a folder, empty, larger than 64 MB or not a text in
   *     UTF-8
   */
  public static SourceText read(Path file) {
    return of(file.toString(), FileBytes.read(file));
  }

  private static InvalidInput wrong(String name, String message) {
    return new InvalidInput(Place.whole(name), message);
  }

  /**
   * The text of a file's bytes.
   *
   * @throws InvalidInput if they are none or not a text in UTF-8
   */
  public static SourceText of(String name, byte[] content) {
    if (Utf8Text.isUtf16(content)) {
      throw wrong(name, "the file is saved as UTF-16; save it as UTF-8");
    }
    if (Utf8Text.hasZero(content)) {
      throw wrong(name, "the file is not a text; a project is written in YAML or JSON");
    }
    Utf8Text decoded = Utf8Text.of(content);
    SourceText text = new SourceText(name, decoded.text());
    if (!decoded.isWhole()) {
      throw new InvalidInput(
          text.placeAt(Integer.MAX_VALUE), "a character here is not UTF-8; save the file as UTF-8");
    }
    if (text.text().isBlank()) {
      throw wrong(name, "the file is empty");
    }
    return text;
  }

  /**
   * The place of a character.
   *
   * @param index its number among Java's characters of the text
   */
  public Place placeOf(int index) {
    return placeAt(text.codePointCount(0, index));
  }

  /**
   * The place of a character.
   *
   * @param before how many characters stand before it, as far as there are so many
   */
  Place placeAt(int before) {
    int all = text.codePointCount(0, text.length());
    int index = text.offsetByCodePoints(0, Math.max(0, Math.min(before, all)));
    int line = 1;
    int lineStart = 0;
    for (int i = 0; i < index; i++) {
      char character = text.charAt(i);
      boolean halfOfLineEnd = character == '\r' && i + 1 < index && text.charAt(i + 1) == '\n';
      if ((character == '\n' || character == '\r') && !halfOfLineEnd) {
        line++;
        lineStart = i + 1;
      }
    }
    return new Place(name, line, 1 + text.codePointCount(lineStart, index));
  }

  /** What stands on the line of a place before it. */
  String lineBefore(Place place) {
    String line = text.lines().skip(place.line() - 1L).findFirst().orElse("");
    int length = line.codePointCount(0, line.length());
    int before = Math.max(0, Math.min(place.column() - 1, length));
    return line.substring(0, line.offsetByCodePoints(0, before));
  }

  /** Whether it is to be read as JSON: by its name, else because it begins with a brace. */
  public boolean isJson() {
    String lower = name.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".yaml") || lower.endsWith(".yml")) {
      return false;
    }
    return lower.endsWith(".json") || text.stripLeading().startsWith("{");
  }
}
