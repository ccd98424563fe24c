package rillwright.solver.law.minor;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.curve.MonotoneCubic;
import rillwright.solver.law.curve.MonotoneCubic.EndSlopes;
import rillwright.solver.law.curve.MonotoneCubic.Knot;

/**
 * Loss known at several flows: the shape-preserving cubic through the origin and the points, the
 * same both ways, straight on past the last point.
 *
 * @param curve head loss (m) against flow (m³/s), strictly increasing from the origin
 */
public record TabulatedLoss(MonotoneCubic curve) implements HeadLaw {
  public TabulatedLoss {
    Require.given("curve", curve);
    if (curve.firstX() != 0 || curve.valueAt(0) != 0) {
      throw new IllegalArgumentException("a table of losses begins at no flow and no loss");
    }
    if (!curve.increases()) {
      throw new IllegalArgumentException("a table of losses rises from point to point");
    }
  }

  /**
   * The law through measured losses: the origin is added unless given, and past the last point the
   * curve goes on rising.
   *
   * @param points flow (m³/s) and head loss (m), flows and losses strictly rising from the origin
   * @throws IllegalArgumentException if there is no point but the origin, or they do not rise
   */
  public static TabulatedLoss through(List<Knot> points) {
    List<Knot> knots = new ArrayList<>(points);
    if (knots.isEmpty() || knots.get(0).x() != 0) {
      knots.add(0, new Knot(0, 0));
    }
    return new TabulatedLoss(MonotoneCubic.through(knots, EndSlopes.STEEP_AT_LAST));
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return Math.copySign(curve.valueAt(Math.abs(flowM3PerS)), flowM3PerS);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return curve.slopeAt(Math.abs(flowM3PerS));
  }
}
