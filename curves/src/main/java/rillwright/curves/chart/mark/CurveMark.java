package rillwright.curves.chart.mark;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;

/**
 * The mark at a pump curve's points.
 *
 * @param shape of it
 * @param radius of it
 * @param edge color
 * @param fill color
 */
public record CurveMark(MarkShape shape, double radius, Color edge, Color fill) {
  /** Of the pump curve of a number: one curve has small dots, of several each has its own. */
  public static CurveMark pump(int number, int count) {
    Color color = Pen.pump(number, count).color();
    if (count == 1) {
      return new CurveMark(MarkShape.DISC, 4.5, color, Ink.PAPER);
    }
    MarkShape[] shapes = MarkShape.values();
    boolean open = number / shapes.length % 2 == 1;
    return new CurveMark(shapes[number % shapes.length], 7.5, color, open ? Ink.PAPER : color);
  }

  public void draw(Graphics2D g, Point2D at) {
    shape.draw(g, at, radius, edge, fill);
  }
}
