package rillwright.cli.report.page.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Breaks text into lines at spaces, but between a number and its unit only where they do not fit a
 * line, or within words that are longer than a line.
 */
public final class Wrapping {
  private static final Pattern BREAK =
      Pattern.compile(
          " +(?!%|(?<=\\d )([cmk]?m2?|ft2?|in|gph|gpm|m3/h|L|gal|psi|kPa|k?Wh?|V|[A-Z]{3})\\b)");

  private Wrapping() {}

  /** Number of columns that a text takes, counted in characters. */
  static int width(String text) {
    return text.codePointCount(0, text.length());
  }

  /** Lines of at most a width; at least one. */
  public static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : BREAK.split(text.strip())) {
      String rest = word;
      while (true) {
        boolean fits = width(line.toString()) + width(rest) + (line.isEmpty() ? 0 : 1) <= width;
        if (fits) {
          line.append(line.isEmpty() ? "" : " ").append(rest);
          break;
        }
        if (!line.isEmpty()) {
          lines.add(line.toString());
          line.setLength(0);
        } else {
          int unit = rest.indexOf(' ');
          int most = rest.offsetByCodePoints(0, width);
          int end = unit > 0 && unit <= most ? unit : most;
          lines.add(rest.substring(0, end));
          rest = rest.substring(end).strip();
        }
      }
    }
    lines.add(line.toString());
    return lines;
  }

  /** The text filled with spaces to a width. */
  static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - width(text)));
  }
}
