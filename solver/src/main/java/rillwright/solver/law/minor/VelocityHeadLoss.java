package rillwright.solver.law.minor;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.HeadLaw;

/**
 * Loss proportional to the velocity head, h = K V²/2g, with the sign of the flow; K may differ by
 * direction.
 *
 * <p>Source: the definition of the loss coefficient, e.g. Hydraulic Institute, Engineering Data
 * Book, section III, eq. 3.B.1 (number from memory).
 *
 * @param kForward loss coefficient for flow from the line's first point to its last, dimensionless,
 *     0 or more
 * @param kBackward the same for flow the other way
 * @param bore where the velocity is taken
 */
public record VelocityHeadLoss(double kForward, double kBackward, Bore bore) implements HeadLaw {

  public VelocityHeadLoss {
    Require.atLeast("loss coefficient", kForward, 0, "");
    Require.atLeast("loss coefficient", kBackward, 0, "");
    Require.given("bore", bore);
  }

  /** The same K in both directions. */
  public VelocityHeadLoss(double k, Bore bore) {
    this(k, k, bore);
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return resistanceAt(flowM3PerS) * flowM3PerS * Math.abs(flowM3PerS);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return 2 * resistanceAt(flowM3PerS) * Math.abs(flowM3PerS);
  }

  /** h = resistance · Q|Q|, s²/m⁵. */
  private double resistanceAt(double flowM3PerS) {
    double k = flowM3PerS >= 0 ? kForward : kBackward;
    double area = bore.areaM2();
    return k / (2 * Gravity.STANDARD_M_PER_S2 * area * area);
  }
}
