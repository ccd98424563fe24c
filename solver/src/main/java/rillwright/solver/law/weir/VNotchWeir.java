package rillwright.solver.law.weir;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Gravity;

/**
 * V-notch in a thin plate, Q = 8/15 · Ce tan(θ/2) √(2g) (h + kh)^2.5 with Ce = 0.578 and kh = 0.85
 * mm.
 *
 * <p>Source: Shen, J. (1981), Discharge characteristics of triangular-notch thin-plate weirs, USGS
 * Water-Supply Paper 1617-B, adopted by ISO 1438 (from memory). The two constants are those of a
 * right-angled notch; other angles use them too, which is within 2 % from 40° to 100°.
 *
 * @param angleDegrees θ, the whole angle of the notch, greater than 0 and less than 180
 */
public record VNotchWeir(double angleDegrees) implements Weir {
  private static final double DISCHARGE_COEFFICIENT = 0.578;
  private static final double HEAD_ADDITION_M = 0.00085;

  public VNotchWeir {
    Require.positive("angle of the notch", angleDegrees, "°");
    Require.below("angle of the notch", angleDegrees, 180, "°");
  }

  private double factor() {
    double halfAngle = Math.toRadians(angleDegrees) / 2;
    return 8.0
        / 15
        * DISCHARGE_COEFFICIENT
        * Math.tan(halfAngle)
        * Math.sqrt(2 * Gravity.STANDARD_M_PER_S2);
  }

  @Override
  public double flowAt(double headM) {
    double he = EffectiveHead.at(headM, HEAD_ADDITION_M);
    return factor() * he * he * Math.sqrt(he);
  }

  @Override
  public double flowSlopeAt(double headM) {
    double he = EffectiveHead.at(headM, HEAD_ADDITION_M);
    return 2.5 * factor() * he * Math.sqrt(he) * EffectiveHead.slopeAt(headM, HEAD_ADDITION_M);
  }

  @Override
  public double headAt(double flowM3PerS) {
    return HeadSearch.headAt(this, flowM3PerS, Math.pow(Math.max(flowM3PerS, 0) / factor(), 0.4));
  }

  @Override
  public OptionalDouble brinkDepthAt(double flowM3PerS) {
    return OptionalDouble.empty();
  }

  @Override
  public OptionalDouble crestWidthM() {
    return OptionalDouble.empty();
  }
}
