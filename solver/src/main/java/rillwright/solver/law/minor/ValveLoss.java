package rillwright.solver.law.minor;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.minor.ValveTravel.ClosedPoint;

/**
 * Loss coefficient K of a valve of some size against how far it is open: log K on straight lines
 * from its K when open through the published points that are not below it, the last slope beyond.
 *
 * @param travel the kind of valve and its published points
 * @param openLossCoefficient K when open, dimensionless, above 0, the last published two not below
 *     it
 */
public record ValveLoss(ValveTravel travel, double openLossCoefficient) {
  private static final double ROUNDING = 1e-12;

  /** Short of shut by no more than anyone could set, a share of the travel. */
  private static final double LEAST_OPENING = 1e-6;

  public ValveLoss {
    Require.given("travel of a valve", travel);
    Require.positive("loss coefficient of an open valve", openLossCoefficient, "");
    if (travel.pointsFrom(openLossCoefficient).size() < 2) {
      throw new IllegalArgumentException(
          "an open valve's loss coefficient " + openLossCoefficient + " is that of a shut one");
    }
  }

  /**
   * K at an opening, dimensionless; infinite when shut.
   *
   * @param opening share of the handle's or stem's travel, 0 (shut) to 1 (open)
   */
  public double lossCoefficientAt(double opening) {
    return opening <= 0
        ? Double.POSITIVE_INFINITY
        : lossCoefficientWhereClosed(travel.closedAt(opening));
  }

  /** The greatest K before it is shut, dimensionless: where the last slope ends. */
  public double greatestLossCoefficient() {
    return lossCoefficientWhereClosed(travel.travel());
  }

  private double lossCoefficientWhereClosed(double at) {
    List<ClosedPoint> points = points();
    int after = 1;
    while (after < points.size() - 1 && at > points.get(after).closed()) {
      after++;
    }
    ClosedPoint before = points.get(after - 1);
    ClosedPoint next = points.get(after);
    double t = (at - before.closed()) / (next.closed() - before.closed());
    double logBefore = Math.log(before.lossCoefficient());
    return Math.exp(logBefore + t * (Math.log(next.lossCoefficient()) - logBefore));
  }

  /**
   * The opening at a K: share of the travel, a millionth to 1; the widest where several have it.
   *
   * @param k dimensionless, not below that of the open valve nor above {@link
   *     #greatestLossCoefficient()}, but for what rounding does
   */
  public double openingAt(double k) {
    List<ClosedPoint> points = points();
    int after = 1;
    while (after < points.size() - 1 && k > points.get(after).lossCoefficient() * (1 + ROUNDING)) {
      after++;
    }
    ClosedPoint before = points.get(after - 1);
    ClosedPoint next = points.get(after);
    double rise = Math.log(next.lossCoefficient() / before.lossCoefficient());
    double t = rise == 0 ? 0 : Math.log(k / before.lossCoefficient()) / rise;
    double at = before.closed() + t * (next.closed() - before.closed());
    return Math.min(1, Math.max(LEAST_OPENING, 1 - at / travel.travel()));
  }

  private List<ClosedPoint> points() {
    List<ClosedPoint> points = new ArrayList<>();
    points.add(new ClosedPoint(0, openLossCoefficient));
    points.addAll(travel.pointsFrom(openLossCoefficient));
    return points;
  }
}
