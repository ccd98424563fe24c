package rillwright.curves.chart.mark;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;
import rillwright.curves.chart.layout.LabelPlacer;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Words.Anchor;

/**
 * Words in a box from which a line leads to a point.
 *
 * @param words in the box
 * @param pad around the words
 */
public record Callout(TextBlock words, double pad) {
  private static final double ROUNDING = 12;

  /**
   * With lines as given.
   *
   * @param widest that a line may be
   */
  public static Callout of(List<String> lines, double widest, double pad) {
    return new Callout(TextBlock.ofLines(lines, Ink.LABEL, widest), pad);
  }

  /**
   * Paints it where there is room near the point.
   *
   * @return whether it is painted: neither without words nor without room
   */
  public boolean paint(Graphics2D g, LabelPlacer placer, Point2D point) {
    if (words.lines().isEmpty()) {
      return false;
    }
    Optional<Rectangle2D> place =
        placer.near(words.width() + 2 * pad, words.height() + 2 * pad, point);
    place.ifPresent(box -> paint(g, box, point));
    return place.isPresent();
  }

  private void paint(Graphics2D g, Rectangle2D box, Point2D point) {
    g.setColor(Ink.TEXT);
    g.setStroke(new BasicStroke(1.8f));
    g.draw(LabelPlacer.leader(box, point));
    RoundRectangle2D edge =
        new RoundRectangle2D.Double(
            box.getX(), box.getY(), box.getWidth(), box.getHeight(), ROUNDING, ROUNDING);
    g.setColor(Ink.PAPER);
    g.fill(edge);
    g.setColor(Ink.TEXT);
    g.draw(edge);
    Words.write(g, words, box.getX() + pad, box.getY() + pad, Anchor.START, Ink.TEXT);
  }
}
