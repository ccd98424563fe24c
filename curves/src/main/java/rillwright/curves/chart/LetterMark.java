package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.util.List;
import rillwright.curves.chart.Words.Anchor;
import rillwright.curves.chart.layout.TextBlock;

/** A letter in a ring. */
final class LetterMark {
  static final double RADIUS = 14;

  private LetterMark() {}

  static void draw(Graphics2D g, String letter, Point2D at) {
    Ellipse2D ring =
        new Ellipse2D.Double(
            at.getX() - RADIUS, at.getY() - RADIUS, 2 * RADIUS, 2 * RADIUS);
    g.setColor(Ink.PAPER);
    g.fill(ring);
    g.setColor(Ink.TEXT);
    g.setStroke(new BasicStroke(2.2f));
    g.draw(ring);
    TextBlock words = TextBlock.ofLines(List.of(letter), Ink.SMALL_LABEL, 4 * RADIUS);
    Words.write(
        g, words, at.getX(), at.getY() - words.lineHeight() / 2 + 1, Anchor.MIDDLE, Ink.TEXT);
  }
}
