package rillwright.solver.law.minor;

import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.curve.MonotoneCubic;

/**
 * Loss known at several flows: the shape-preserving cubic through the origin and the points, the
 * same both ways, straight on past the last point.
 *
 * @param curve head loss (m) against flow (m³/s), strictly increasing from the origin
 */
public record TabulatedLoss(MonotoneCubic curve) implements HeadLaw {
  public TabulatedLoss {
    if (curve.firstX() != 0 || curve.valueAt(0) != 0) {
      throw new IllegalArgumentException("a table of losses begins at no flow and no loss");
    }
    if (!curve.increases()) {
      throw new IllegalArgumentException("a table of losses rises from point to point");
    }
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
