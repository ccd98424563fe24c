package rillwright.curves.chart.mark;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import rillwright.curves.chart.layout.Obstacles;

/**
 * A shape with a point in it, on a white ground that lifts it off the curves.
 *
 * @param shape a disc for a ring
 * @param radius of the shape
 */
public record RingMark(MarkShape shape, double radius) {
  private static final double CLEAR = 4;

  /** A ring. */
  public RingMark(double radius) {
    this(MarkShape.DISC, radius);
  }

  public void draw(Graphics2D g, Point2D at) {
    g.setColor(Ink.PAPER);
    g.fill(shape.at(at.getX(), at.getY(), radius + 3));
    g.setColor(Ink.BLACK);
    g.setStroke(new BasicStroke(3.2f));
    g.draw(shape.at(at.getX(), at.getY(), radius));
    g.fill(MarkShape.DISC.at(at.getX(), at.getY(), 0.45 * radius));
  }

  /** Keeps labels off it. */
  public void addTo(Obstacles obstacles, Point2D at) {
    obstacles.add(at, radius + CLEAR);
  }
}
