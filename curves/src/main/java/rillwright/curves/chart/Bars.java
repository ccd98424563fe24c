package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import rillwright.curves.chart.content.CausesChart.CauseBar;
import rillwright.curves.chart.content.OddsChart.Share;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.LetterMark;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;

/**
 * Bars one below the other, each with its name above it and its number after it.
 *
 * @param bars from top to bottom
 * @param tallestRow of a bar with its name
 * @param thickness of a bar, as a share of its row
 * @param belowName between a name and its bar
 * @param numberWidth left free after the longest bar
 */
record Bars(
    List<Bar> bars, double tallestRow, double thickness, double belowName, double numberWidth) {
  private static final double SHORTEST = 2;
  private static final double BEFORE_NAME = 12;
  private static final double A_LETTER = 14;
  private static final double BEFORE_LETTERED_NAME = 52;
  private static final double BEFORE_NUMBER = 10;

  /**
   * A bar.
   *
   * @param letter before the name; may be empty
   * @param name of it
   * @param length 0 to 1
   * @param label the length in words
   */
  private record Bar(String letter, String name, double length, String label) {}

  /** A share of the variance. */
  static Bars ofShares(List<Share> shares) {
    return new Bars(
        shares.stream()
            .map(share -> new Bar("", share.name(), share.share(), share.label()))
            .toList(),
        84,
        0.36,
        2,
        96);
  }

  /** How likely causes are. */
  static Bars ofCauses(List<CauseBar> causes) {
    return new Bars(
        causes.stream()
            .map(cause -> new Bar(cause.letter(), cause.name(), cause.probability(), cause.label()))
            .toList(),
        92,
        0.34,
        6,
        110);
  }

  void paint(Graphics2D g, Rectangle2D area) {
    double row = Math.min(tallestRow, area.getHeight() / bars.size());
    for (int i = 0; i < bars.size(); i++) {
      paint(g, bars.get(i), area, area.getY() + i * row, row);
    }
    g.setColor(Ink.AXIS);
    g.setStroke(new BasicStroke(1.8f));
    double bottom = area.getY() + row * bars.size();
    g.draw(new Line2D.Double(area.getX(), area.getY(), area.getX(), bottom));
  }

  private void paint(Graphics2D g, Bar bar, Rectangle2D area, double top, double row) {
    double left = area.getX();
    boolean lettered = !bar.letter().isEmpty();
    if (lettered) {
      LetterMark.draw(g, bar.letter(), new Point2D.Double(left + 28, top + 15));
    }
    double wider = Math.max(0, bar.letter().length() - 1) * A_LETTER;
    double nameLeft = left + (lettered ? BEFORE_LETTERED_NAME + wider : BEFORE_NAME);
    TextBlock name = TextBlock.ofLines(List.of(bar.name()), Ink.NOTE, area.getMaxX() - nameLeft);
    Words.write(g, name, nameLeft, top, Anchor.START, Ink.TEXT);
    double barTop = top + name.lineHeight() + belowName;
    double height = thickness * row;
    double width = Math.max(SHORTEST, (area.getWidth() - numberWidth) * bar.length());
    g.setColor(Ink.BLUE);
    g.fill(new Rectangle2D.Double(left, barTop, width, height));
    TextBlock number = TextBlock.ofLines(List.of(bar.label()), Ink.LABEL, area.getWidth());
    double textTop = barTop + (height - number.lineHeight()) / 2;
    Words.write(g, number, left + width + BEFORE_NUMBER, textTop, Anchor.START, Ink.TEXT);
  }
}
