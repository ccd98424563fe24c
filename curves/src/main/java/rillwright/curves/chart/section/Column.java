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
  private static final double WIDEST = 168;
  private static final double GAP = 14;
  private static final int MOST_NAME_LINES = 4;

  static Column of(Piece piece) {
    double word =
        Arrays.stream(piece.name().split("\\s+", -1))
            .mapToDouble(it -> TextBlock.ofLine(it, Ink.SMALL_LABEL).width())
            .max()
            .orElse(0);
    TextBlock figures = TextBlock.ofLines(piece.figures(), Ink.SMALL, WIDEST);
    double wide = Math.min(WIDEST, Math.max(Math.max(word, figures.width()), symbolWidth(piece)));
    return new Column(
        piece,
        TextBlock.wrapped(piece.name(), Ink.SMALL_LABEL, wide + 1, MOST_NAME_LINES),
        figures);
  }

  /** The least that it takes. */
  double leastWidth() {
    return Math.max(Math.max(name.width(), figures.width()), symbolWidth(piece)) + GAP;
  }

  private static double symbolWidth(Piece piece) {
    Symbol symbol = piece.symbol();
    return switch (symbol) {
      case BASIN -> 100;
      case PIPE -> 108;
      case CHAMBER, POOL, FALL, REACH -> 64;
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
