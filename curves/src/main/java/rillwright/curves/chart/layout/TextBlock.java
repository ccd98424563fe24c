package rillwright.curves.chart.layout;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;
import rillwright.curves.wording.PlainText;

/**
 * Lines of text in one font, fitted to a width.
 *
 * @param lines as they are to be drawn
 * @param font of all of them
 */
public record TextBlock(List<String> lines, Font font) {
  private static final FontRenderContext PAPER = new FontRenderContext(null, true, true);
  private static final double LEADING = 1.22;
  private static final String CUT = "\u2026";

  public TextBlock {
    lines = List.copyOf(lines);
  }

  /** Lines as given, each made harmless, shortened where it is too wide; empty ones left out. */
  public static TextBlock ofLines(List<String> lines, Font font, double maxWidth) {
    return new TextBlock(
        lines.stream()
            .map(PlainText::line)
            .filter(line -> !line.isEmpty())
            .map(line -> shortened(line, font, maxWidth))
            .toList(),
        font);
  }

  /** One line, made harmless, as wide as it is. */
  public static TextBlock ofLine(String line, Font font) {
    return ofLines(List.of(line), font, Double.POSITIVE_INFINITY);
  }

  /** A text made harmless and broken between words; what does not fit into the lines is cut. */
  public static TextBlock wrapped(String text, Font font, double maxWidth, int maxLines) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : PlainText.line(text).split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      boolean isLast = lines.size() == maxLines - 1;
      if (line.isEmpty() || isLast || width(longer, font) <= maxWidth) {
        line = longer;
      } else {
        lines.add(shortened(line, font, maxWidth));
        line = word;
      }
    }
    if (!line.isEmpty()) {
      lines.add(shortened(line, font, maxWidth));
    }
    return new TextBlock(lines, font);
  }

  private static String shortened(String line, Font font, double maxWidth) {
    if (width(line, font) <= maxWidth) {
      return line;
    }
    int end = line.length();
    while (end > 0 && width(line.substring(0, end) + CUT, font) > maxWidth) {
      end = line.offsetByCodePoints(end, -1);
    }
    return line.substring(0, end).stripTrailing() + CUT;
  }

  private static double width(String line, Font font) {
    return font.getStringBounds(line, PAPER).getWidth();
  }

  /** Width of a line. */
  public double widthOf(String line) {
    return width(line, font);
  }

  /** Width of the widest line. */
  public double width() {
    return lines.stream().mapToDouble(this::widthOf).max().orElse(0);
  }

  /** From one line to the next. */
  public double lineHeight() {
    return font.getSize2D() * LEADING;
  }

  /** Height of all lines. */
  public double height() {
    return lines.size() * lineHeight();
  }

  /** From the top of a line to its base line. */
  public double ascent() {
    return font.getSize2D() * 0.95;
  }
}
