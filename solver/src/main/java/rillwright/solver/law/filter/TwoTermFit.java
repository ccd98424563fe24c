package rillwright.solver.law.filter;

import java.util.List;
import rillwright.solver.invariant.Require;

/**
 * Fits {@link TwoTermLoss} to measured losses: exactly through two points, by least squares of the
 * relative error with both terms 0 or more through more.
 */
public final class TwoTermFit {

  /** One measured loss: flow in m³/s and head in m, both greater than 0. */
  public record Point(double flowM3PerS, double headM) {
    public Point {
      Require.positive("flow of a filter", flowM3PerS, "m³/s");
      Require.positive("head of a filter", headM, "m");
    }
  }

  private TwoTermFit() {}

  /**
   * The law through the points.
   *
   * @param points two or more, at different flows
   * @throws IllegalArgumentException if there are fewer, if all flows are alike, or if two points
   *     ask for a negative term
   */
  public static TwoTermLoss through(List<Point> points) {
    if (points.stream().mapToDouble(Point::flowM3PerS).distinct().count() < 2) {
      throw new IllegalArgumentException(
          "a filter needs losses at two different flows, or one rating");
    }
    // Each point asks a·x + b·y = 1 with x = Q/h and y = Q²/h: the relative error.
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double x1 = 0;
    double y1 = 0;
    for (Point point : points) {
      double x = point.flowM3PerS() / point.headM();
      double y = x * point.flowM3PerS();
      xx += x * x;
      xy += x * y;
      yy += y * y;
      x1 += x;
      y1 += y;
    }
    double determinant = xx * yy - xy * xy;
    double linear = (x1 * yy - y1 * xy) / determinant;
    double quadratic = (xx * y1 - xy * x1) / determinant;
    if (points.size() == 2) {
      return throughTwo(points.get(0), points.get(1));
    }
    if (linear < 0) {
      return new TwoTermLoss(0, y1 / yy);
    }
    if (quadratic < 0) {
      return new TwoTermLoss(x1 / xx, 0);
    }
    return new TwoTermLoss(linear, quadratic);
  }

  private static TwoTermLoss throughTwo(Point one, Point other) {
    double resistance1 = one.headM() / one.flowM3PerS();
    double resistance2 = other.headM() / other.flowM3PerS();
    double quadratic = (resistance2 - resistance1) / (other.flowM3PerS() - one.flowM3PerS());
    double linear = resistance1 - quadratic * one.flowM3PerS();
    double rounding = 1e-12 * Math.max(resistance1, resistance2);
    if (linear < -rounding
        || quadratic * Math.max(one.flowM3PerS(), other.flowM3PerS()) < -rounding) {
      throw new IllegalArgumentException(
          linear < 0
              ? "its loss rises faster than the square of the flow"
              : "its loss rises more slowly than the flow");
    }
    return new TwoTermLoss(Math.max(0, linear), Math.max(0, quadratic));
  }
}
