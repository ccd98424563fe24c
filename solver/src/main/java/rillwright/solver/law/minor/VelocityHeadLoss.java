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
 * Book, section III, eq. 3.B.1.
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

  /**
   * What a change of bore between two lengths of pipe takes, on the velocity head of the smaller:
   * in the direction of the water (1 - (d/D)²)² where it gets wider, 0.5 (1 - (d/D)²) where it gets
   * narrower.
   *
   * <p>Source: Borda and Carnot's (v1 - v2)²/2g; both as given in Hydraulic Institute, Engineering
   * Data Book, section III, eqs. 3.B.3a and 3.B.1, and in Crane, Technical Paper 410.
   *
   * @param before the bore on the side of the line's first point
   * @param after the bore on the side of its second
   */
  public static VelocityHeadLoss ofChange(Bore before, Bore after) {
    Bore smaller = before.diameterM() < after.diameterM() ? before : after;
    Bore larger = smaller.equals(before) ? after : before;
    double openShare = smaller.areaM2() / larger.areaM2();
    double wider = (1 - openShare) * (1 - openShare);
    double narrower = 0.5 * (1 - openShare);
    return smaller.equals(before)
        ? new VelocityHeadLoss(wider, narrower, smaller)
        : new VelocityHeadLoss(narrower, wider, smaller);
  }

  /** So many of it, in series. */
  public VelocityHeadLoss times(int count) {
    return new VelocityHeadLoss(count * kForward, count * kBackward, bore);
  }

  /** The same K on a bore so many times as wide. */
  public VelocityHeadLoss narrowed(double factor) {
    return new VelocityHeadLoss(kForward, kBackward, bore.times(factor));
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
