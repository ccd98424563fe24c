package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import rillwright.curves.chart.Words.Anchor;
import rillwright.curves.chart.content.CausesChart.CauseBar;
import rillwright.curves.chart.layout.TextBlock;

/** Bars one below the other: the cause's letter and name above, its probability behind. */
final class ProbabilityBars {
  private static final double TALLEST_ROW = 92;
  private static final double NUMBER_WIDTH = 110;
  private static final double BAR = 0.34;

  private final List<CauseBar> causes;

  ProbabilityBars(List<CauseBar> causes) {
    this.causes = causes;
  }

  void paint(Graphics2D g, Rectangle2D area) {
    double row = Math.min(TALLEST_ROW, area.getHeight() / causes.size());
    for (int i = 0; i < causes.size(); i++) {
      paint(g, causes.get(i), area, area.getY() + i * row, row);
    }
    g.setColor(Ink.AXIS);
    g.setStroke(new BasicStroke(1.8f));
    double bottom = area.getY() + row * causes.size();
    g.draw(new Line2D.Double(area.getX(), area.getY(), area.getX(), bottom));
  }

  private static void paint(
      Graphics2D g, CauseBar cause, Rectangle2D area, double top, double row) {
    double left = area.getX();
    boolean lettered = !cause.letter().isEmpty();
    if (lettered) {
      LetterMark.draw(g, cause.letter(), new Point2D.Double(left + 28, top + 15));
    }
    double nameLeft = left + (lettered ? 52 : 12);
    TextBlock name = TextBlock.ofLines(List.of(cause.name()), Ink.NOTE, area.getMaxX() - nameLeft);
    Words.write(g, name, nameLeft, top, Anchor.START, Ink.TEXT);
    double barTop = top + name.lineHeight() + 6;
    double height = BAR * row;
    double width = Math.max(2, (area.getWidth() - NUMBER_WIDTH) * cause.probability());
    g.setColor(Ink.BLUE);
    g.fill(new Rectangle2D.Double(left, barTop, width, height));
    TextBlock number = TextBlock.ofLines(List.of(cause.label()), Ink.LABEL, area.getWidth());
    double textTop = barTop + (height - number.lineHeight()) / 2;
    Words.write(g, number, left + width + 10, textTop, Anchor.START, Ink.TEXT);
  }
}
