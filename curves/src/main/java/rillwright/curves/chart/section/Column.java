package rillwright.curves.chart.section;

import java.awt.Graphics2D;
import java.util.Arrays;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Symbol;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;

/**
 * A piece with the words that stand below it.
 *
 * @param piece what is drawn
 * @param name of it, in as many lines as it needs
 * @param figures below the name
 */
record Column(Piece piece, TextBlock name, TextBlock figures) {
  private static final double WIDEST = 190;
  private static final double GAP = 14;
  private static final int MOST_NAME_LINES = 4;

  /**
   * The column of a piece.
   *
   * @param wider by how much it may be wider than it must be, for a name in fewer lines
   */
  static Column of(Piece piece, double wider) {
    double word =
        Arrays.stream(piece.name().split("\\s+", -1))
            .mapToDouble(it -> TextBlock.ofLine(it, Ink.SMALL_LABEL).width())
            .max()
            .orElse(0);
    TextBlock figures = TextBlock.ofLines(piece.figures(), Ink.SMALL, WIDEST);
    double wide = Math.min(WIDEST, Math.max(Math.max(word, figures.width()), symbolWidth(piece)));
    return new Column(piece, name(piece.name(), wide + 1, wider), figures);
  }

  /** In two lines where a little more width makes it so. */
  private static TextBlock name(String name, double width, double wider) {
    TextBlock narrow = TextBlock.wrapped(name, Ink.SMALL_LABEL, width, MOST_NAME_LINES);
    for (double more = 10; narrow.lines().size() > 2 && more <= wider; more += 10) {
      TextBlock wide = TextBlock.wrapped(name, Ink.SMALL_LABEL, width + more, MOST_NAME_LINES);
      if (wide.lines().size() <= 2) {
        return wide;
      }
    }
    return narrow;
  }

  /** The least that it takes. */
  double leastWidth() {
    return Math.max(Math.max(name.width(), figures.width()), symbolWidth(piece)) + GAP;
  }

  private static double symbolWidth(Piece piece) {
    Symbol symbol = piece.symbol();
    return switch (symbol) {
      case BASIN -> 100;
      case CHAMBER, POOL, FALL, REACH, PIPE -> 64;
      default -> 36;
    };
  }

  /** Height of its words. */
  double wordsHeight() {
    return name.height() + figures.height();
  }

  void write(Graphics2D g, double centerX, double top) {
    Words.write(g, name, centerX, top, Anchor.MIDDLE, Ink.TEXT);
    Words.write(g, figures, centerX, top + name.height(), Anchor.MIDDLE, Ink.SOFT_TEXT);
  }
}
