package rillwright.curves.chart.mark;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.RoundRectangle2D;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Words.Anchor;

/** One or more letters in a ring. */
public final class LetterMark {
  public static final double RADIUS = 14;

  /** Room that one more letter takes. */
  private static final double LETTER = 15;

  private LetterMark() {}

  /** Half the width of a ring around so many letters. */
  public static double halfWidth(int letters) {
    return RADIUS + (letters - 1) * LETTER / 2;
  }

  public static void draw(Graphics2D g, String letters, Point2D at) {
    double half = halfWidth(letters.length());
    RoundRectangle2D ring =
        new RoundRectangle2D.Double(
            at.getX() - half, at.getY() - RADIUS, 2 * half, 2 * RADIUS, 2 * RADIUS, 2 * RADIUS);
    g.setColor(Ink.PAPER);
    g.fill(ring);
    g.setColor(Ink.TEXT);
    g.setStroke(new BasicStroke(2.2f));
    g.draw(ring);
    TextBlock words = TextBlock.ofLine(letters, Ink.SMALL_LABEL);
    Words.write(
        g, words, at.getX(), at.getY() - words.lineHeight() / 2 + 1, Anchor.MIDDLE, Ink.TEXT);
  }
}
