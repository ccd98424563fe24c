package rillwright.curves.chart.layout;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds places for labels where they cover nothing. */
public final class LabelPlacer {
  private static final double GAP = 9;
  private static final List<Double> CURVE_GAPS = List.of(GAP, 16.0);
  private static final double OTHERS_FARTHER = 5;
  private static final double LEAST_GAP = 6;
  private static final double GREATEST_GAP = 24;
  private static final double NEAREST = 34;
  private static final double CLEAR_OF_MARK = 25;
  private static final double FARTHEST = 700;
  private static final double DISTANCE_STEP = 14;
  private static final int DIRECTIONS = 24;
  private static final double CROSSED_CURVE_COST = 120;
  private static final double CROSSED_LABEL_COST = 2000;

  private final Obstacles obstacles;

  /**
   * A placer that adds each label that it places to the obstacles.
   *
   * @param obstacles to keep clear of
   */
  public LabelPlacer(Obstacles obstacles) {
    this.obstacles = obstacles;
  }

  /**
   * A place beside a curve, touching no other.
   *
   * @param width of the label
   * @param height of the label
   * @param curve that it belongs to
   * @param shares of the curve's length at which to try, best first
   * @return nothing if there is no room
   */
  public Optional<Rectangle2D> beside(
      double width, double height, Polyline curve, List<Double> shares) {
    for (double gap : CURVE_GAPS) {
      for (double share : shares) {
        for (int side = 1; side >= -1; side -= 2) {
          Rectangle2D place = besideAt(width, height, curve, share, side * gap);
          if (belongsTo(curve, place)) {
            obstacles.add(place);
            return Optional.of(place);
          }
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a label is nearer to its curve than to all others, and covers nothing. */
  private boolean belongsTo(Polyline curve, Rectangle2D place) {
    if (!obstacles.leaveFree(place, LEAST_GAP)) {
      return false;
    }
    double own = curve.distanceTo(place);
    return own <= GREATEST_GAP && obstacles.distanceToOthers(place, curve) >= own + OTHERS_FARTHER;
  }

  private static Rectangle2D besideAt(
      double width, double height, Polyline curve, double share, double gap) {
    Point2D before = curve.at(Math.max(0, share - 0.02));
    Point2D after = curve.at(Math.min(1, share + 0.02));
    Point2D at = curve.at(share);
    double dx = after.getX() - before.getX();
    double dy = after.getY() - before.getY();
    double length = Math.max(1e-9, Math.hypot(dx, dy));
    double side = Math.signum(gap);
    double normalX = side * dy / length;
    double normalY = -side * dx / length;
    double reach = Math.abs(gap) + Math.abs(normalX) * width / 2 + Math.abs(normalY) * height / 2;
    return centred(at.getX() + normalX * reach, at.getY() + normalY * reach, width, height);
  }

  /**
   * A place near a point from which a short line can lead to it, to the right of it and above if
   * there is a choice.
   *
   * @return nothing if there is no room
   */
  public Optional<Rectangle2D> near(double width, double height, Point2D point) {
    Rectangle2D best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double distance = NEAREST; distance <= FARTHEST; distance += DISTANCE_STEP) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = 2 * Math.PI * i / DIRECTIONS;
        double x = Math.cos(angle);
        double y = Math.sin(angle);
        Rectangle2D place =
            centred(
                point.getX() + x * (distance + width / 2),
                point.getY() + y * (distance + height / 2),
                width,
                height);
        OptionalDouble cost = cost(place, point);
        if (cost.isPresent() && cost.getAsDouble() - 20 * x + 10 * y < least) {
          least = cost.getAsDouble() - 20 * x + 10 * y;
          best = place;
        }
      }
    }
    Optional<Rectangle2D> found = Optional.ofNullable(best);
    found.ifPresent(
        place -> {
          obstacles.add(place);
          Line2D leader = leader(place, point);
          obstacles.add(new Polyline(List.of(leader.getP1(), leader.getP2())));
        });
    return found;
  }

  private OptionalDouble cost(Rectangle2D place, Point2D point) {
    if (!obstacles.leaveFree(place, GAP)) {
      return OptionalDouble.empty();
    }
    Line2D leader = leader(place, point);
    double length = leader.getP1().distance(leader.getP2());
    Line2D rest = withoutStart(leader, CLEAR_OF_MARK / length);
    return OptionalDouble.of(
        length
            + CROSSED_CURVE_COST * obstacles.curvesOn(rest)
            + CROSSED_LABEL_COST * obstacles.blocksOn(rest));
  }

  private static Line2D withoutStart(Line2D line, double share) {
    return new Line2D.Double(
        line.getX1() + share * (line.getX2() - line.getX1()),
        line.getY1() + share * (line.getY2() - line.getY1()),
        line.getX2(),
        line.getY2());
  }

  /** The shortest line from a point to a label. */
  public static Line2D leader(Rectangle2D label, Point2D point) {
    double x = Math.min(Math.max(point.getX(), label.getMinX()), label.getMaxX());
    double y = Math.min(Math.max(point.getY(), label.getMinY()), label.getMaxY());
    return new Line2D.Double(point, new Point2D.Double(x, y));
  }

  private static Rectangle2D centred(double x, double y, double width, double height) {
    return new Rectangle2D.Double(x - width / 2, y - height / 2, width, height);
  }
}
