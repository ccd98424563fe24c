package rillwright.curves.chart.layout;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A curve on the paper. */
public final class Polyline {
  private final List<Point2D> points;
  private final List<Line2D> segments;
  private final Rectangle2D bounds;

  /**
   * A curve through points.
   *
   * @param points two or more, in order, not changed by anybody
   */
  public Polyline(List<Point2D> points) {
    this.points = List.copyOf(points);
    this.segments =
        IntStream.range(1, points.size())
            .<Line2D>mapToObj(i -> new Line2D.Double(points.get(i - 1), points.get(i)))
            .toList();
    this.bounds = path().getBounds2D();
  }

  /** Its points. */
  public List<Point2D> points() {
    return points;
  }

  /** Its straight pieces. */
  public List<Line2D> segments() {
    return segments;
  }

  /** One path, so that dashes run through. */
  public Path2D path() {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < points.size(); i++) {
      Point2D point = points.get(i);
      if (i == 0) {
        path.moveTo(point.getX(), point.getY());
      } else {
        path.lineTo(point.getX(), point.getY());
      }
    }
    return path;
  }

  /** What of it lies in a rectangle: nothing, one piece or several. */
  public List<Polyline> within(Rectangle2D area) {
    List<Polyline> pieces = new ArrayList<>();
    List<Point2D> piece = new ArrayList<>();
    for (Line2D segment : segments) {
      Optional<Line2D> inside = clip(segment, area);
      boolean goesOn =
          inside.isPresent()
              && !piece.isEmpty()
              && piece.get(piece.size() - 1).distance(inside.get().getP1()) < 1e-6;
      if (!goesOn) {
        addTo(pieces, piece);
        piece.clear();
        inside.ifPresent(line -> piece.add(line.getP1()));
      }
      inside.ifPresent(line -> piece.add(line.getP2()));
    }
    addTo(pieces, piece);
    return pieces;
  }

  private static void addTo(List<Polyline> pieces, List<Point2D> piece) {
    if (piece.size() > 1) {
      pieces.add(new Polyline(piece));
    }
  }

  /**
   * The part of a segment in a rectangle.
   *
   * <p>Source: Liang, Y.-D. and Barsky, B. A. (1984), "A new concept and method for line clipping",
   * ACM Transactions on Graphics 3(1), 1–22 (from memory).
   */
  private static Optional<Line2D> clip(Line2D line, Rectangle2D area) {
    double dx = line.getX2() - line.getX1();
    double dy = line.getY2() - line.getY1();
    double[] towards = {-dx, dx, -dy, dy};
    double[] room = {
      line.getX1() - area.getMinX(),
      area.getMaxX() - line.getX1(),
      line.getY1() - area.getMinY(),
      area.getMaxY() - line.getY1()
    };
    double from = 0;
    double to = 1;
    for (int side = 0; side < towards.length; side++) {
      double share = room[side] / towards[side];
      if (towards[side] == 0 && room[side] < 0) {
        return Optional.empty();
      } else if (towards[side] < 0) {
        from = Math.max(from, share);
      } else if (towards[side] > 0) {
        to = Math.min(to, share);
      }
    }
    return from > to
        ? Optional.empty()
        : Optional.of(
            new Line2D.Double(
                line.getX1() + from * dx,
                line.getY1() + from * dy,
                line.getX1() + to * dx,
                line.getY1() + to * dy));
  }

  /** Whether any of it lies in a rectangle. */
  boolean crosses(Rectangle2D area) {
    return isNear(area) && segments.stream().anyMatch(segment -> segment.intersects(area));
  }

  private boolean isNear(Rectangle2D area) {
    return bounds.getMinX() <= area.getMaxX()
        && bounds.getMaxX() >= area.getMinX()
        && bounds.getMinY() <= area.getMaxY()
        && bounds.getMaxY() >= area.getMinY();
  }

  /** How far the nearest of it is from a rectangle; 0 where it runs in it. */
  double distanceTo(Rectangle2D area) {
    return segments.stream().mapToDouble(segment -> distance(segment, area)).min().orElseThrow();
  }

  private static double distance(Line2D segment, Rectangle2D area) {
    if (segment.intersects(area)) {
      return 0;
    }
    double fromCorners =
        Math.min(
            Math.min(
                segment.ptSegDist(area.getMinX(), area.getMinY()),
                segment.ptSegDist(area.getMaxX(), area.getMinY())),
            Math.min(
                segment.ptSegDist(area.getMinX(), area.getMaxY()),
                segment.ptSegDist(area.getMaxX(), area.getMaxY())));
    double fromEnds = Math.min(distance(segment.getP1(), area), distance(segment.getP2(), area));
    return Math.min(fromCorners, fromEnds);
  }

  private static double distance(Point2D point, Rectangle2D area) {
    double dx = Math.max(0, Math.max(area.getMinX() - point.getX(), point.getX() - area.getMaxX()));
    double dy = Math.max(0, Math.max(area.getMinY() - point.getY(), point.getY() - area.getMaxY()));
    return Math.hypot(dx, dy);
  }

  /** Its length. */
  public double length() {
    return segments.stream()
        .mapToDouble(segment -> segment.getP1().distance(segment.getP2()))
        .sum();
  }

  /** The point at a share of its length, 0 to 1. */
  public Point2D at(double share) {
    double left = share * length();
    for (Line2D segment : segments) {
      double length = segment.getP1().distance(segment.getP2());
      if (left <= length && length > 0) {
        double t = left / length;
        return new Point2D.Double(
            segment.getX1() + t * (segment.getX2() - segment.getX1()),
            segment.getY1() + t * (segment.getY2() - segment.getY1()));
      }
      left -= length;
    }
    return points.get(points.size() - 1);
  }
}
