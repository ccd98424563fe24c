package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import rillwright.curves.chart.Words.Anchor;
import rillwright.curves.chart.content.OddsChart.Share;
import rillwright.curves.chart.layout.TextBlock;

/** Bars one below the other, each with its name above it and its number behind it. */
final class ShareBars {
  private static final double TALLEST_ROW = 84;
  private static final double NUMBER_WIDTH = 96;
  private static final double BAR = 0.36;

  private final List<Share> shares;

  ShareBars(List<Share> shares) {
    this.shares = shares;
  }

  void paint(Graphics2D g, Rectangle2D area) {
    double row = Math.min(TALLEST_ROW, area.getHeight() / shares.size());
    double full = area.getWidth() - NUMBER_WIDTH;
    for (int i = 0; i < shares.size(); i++) {
      paint(g, shares.get(i), area.getX(), area.getY() + i * row, row, full);
    }
    g.setColor(Ink.AXIS);
    g.setStroke(new BasicStroke(1.8f));
    double bottom = area.getY() + row * shares.size();
    g.draw(new Line2D.Double(area.getX(), area.getY(), area.getX(), bottom));
  }

  private static void paint(
      Graphics2D g, Share share, double left, double top, double row, double full) {
    TextBlock name = TextBlock.ofLines(List.of(share.name()), Ink.NOTE, full + NUMBER_WIDTH - 12);
    Words.write(g, name, left + 12, top, Anchor.START, Ink.TEXT);
    double barTop = top + name.lineHeight() + 2;
    double height = BAR * row;
    double width = Math.max(2, full * share.share());
    g.setColor(Ink.BLUE);
    g.fill(new Rectangle2D.Double(left, barTop, width, height));
    TextBlock number = TextBlock.ofLines(List.of(share.label()), Ink.LABEL, NUMBER_WIDTH);
    double textTop = barTop + (height - number.lineHeight()) / 2;
    Words.write(g, number, left + width + 10, textTop, Anchor.START, Ink.TEXT);
  }
}
