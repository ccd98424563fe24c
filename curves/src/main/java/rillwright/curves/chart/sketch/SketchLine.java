package rillwright.curves.chart.sketch;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.QuadCurve2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import rillwright.curves.chart.content.SketchChart;
import rillwright.curves.chart.content.SketchChart.Link;
import rillwright.curves.chart.layout.Obstacles;
import rillwright.curves.chart.layout.Polyline;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.LetterMark;
import rillwright.curves.chart.mark.Pen;

/**
 * A line of a sketch at its place on the paper, with its number on it.
 *
 * @param number as it is listed
 * @param path on the paper
 * @param flows whether water runs in it
 */
public record SketchLine(String number, Polyline path, boolean flows) {
  /** Of a line in which no water runs. */
  public static final Pen DRY = new Pen(Ink.AXIS, 3, List.of(10f, 7f));

  private static final Pen WET = new Pen(Ink.TEXT, 3, List.of());
  private static final double BEND = 0.18;
  private static final int PIECES = 12;
  private static final double CLEAR = 5;
  private static final double ARROW = 9;
  private static final List<Double> SHARES = List.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8);

  /** The lines of a sketch whose points have places; lines between the same points bend apart. */
  public static List<SketchLine> list(SketchChart chart, List<Point2D> places) {
    List<SketchLine> lines = new ArrayList<>();
    for (int i = 0; i < chart.links().size(); i++) {
      Link link = chart.links().get(i);
      String number = Integer.toString(i + 1);
      lines.add(new SketchLine(number, path(chart, i, places), link.flows()));
    }
    return lines;
  }

  private static Polyline path(SketchChart chart, int index, List<Point2D> places) {
    Link link = chart.links().get(index);
    int alike = 0;
    int before = 0;
    for (int i = 0; i < chart.links().size(); i++) {
      if (joinTheSame(link, chart.links().get(i))) {
        alike++;
        before += i < index ? 1 : 0;
      }
    }
    double bend = BEND * (before - (alike - 1) / 2.0) * (link.from() < link.to() ? 1 : -1);
    Point2D from = places.get(link.from());
    Point2D to = places.get(link.to());
    double dx = to.getX() - from.getX();
    double dy = to.getY() - from.getY();
    double middleX = (from.getX() + to.getX()) / 2 - 2 * bend * dy;
    double middleY = (from.getY() + to.getY()) / 2 + 2 * bend * dx;
    QuadCurve2D curve =
        new QuadCurve2D.Double(from.getX(), from.getY(), middleX, middleY, to.getX(), to.getY());
    List<Point2D> points = new ArrayList<>();
    for (int i = 0; i <= PIECES; i++) {
      points.add(at(curve, (double) i / PIECES));
    }
    return new Polyline(points);
  }

  private static boolean joinTheSame(Link one, Link other) {
    return Math.min(one.from(), one.to()) == Math.min(other.from(), other.to())
        && Math.max(one.from(), one.to()) == Math.max(other.from(), other.to());
  }

  private static Point2D at(QuadCurve2D curve, double t) {
    double s = 1 - t;
    return new Point2D.Double(
        s * s * curve.getX1() + 2 * s * t * curve.getCtrlX() + t * t * curve.getX2(),
        s * s * curve.getY1() + 2 * s * t * curve.getCtrlY() + t * t * curve.getY2());
  }

  /** Draws the line itself. */
  public void paint(Graphics2D g) {
    (flows ? WET : DRY).draw(g, path.path());
  }

  /** Draws its number where it covers no other, with an arrow the way the water runs. */
  public void paintNumber(Graphics2D g, Obstacles obstacles) {
    double half = LetterMark.halfWidth(number.length()) + CLEAR;
    double share =
        SHARES.stream()
            .filter(it -> obstacles.isFreeOfBlocks(around(path.at(it), half)))
            .findFirst()
            .orElse(SHARES.get(0));
    if (flows) {
      arrow(g, path.at(share + 0.1), path.at(share + 0.14));
    }
    LetterMark.draw(g, number, path.at(share));
    obstacles.add(around(path.at(share), half));
  }

  private static Rectangle2D around(Point2D at, double half) {
    double high = LetterMark.RADIUS + CLEAR;
    return new Rectangle2D.Double(at.getX() - half, at.getY() - high, 2 * half, 2 * high);
  }

  private static void arrow(Graphics2D g, Point2D from, Point2D to) {
    double dx = to.getX() - from.getX();
    double dy = to.getY() - from.getY();
    double length = Math.max(1e-9, Math.hypot(dx, dy));
    double ux = ARROW * dx / length;
    double uy = ARROW * dy / length;
    Path2D head = new Path2D.Double();
    head.moveTo(from.getX() + ux, from.getY() + uy);
    head.lineTo(from.getX() - ux - 0.8 * uy, from.getY() - uy + 0.8 * ux);
    head.lineTo(from.getX() - ux + 0.8 * uy, from.getY() - uy - 0.8 * ux);
    head.closePath();
    g.setColor(Ink.TEXT);
    g.fill(head);
  }
}
