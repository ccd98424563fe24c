package rillwright.solver.law.weir;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Gravity;

/**
 * V-notch in a thin plate, Q = 8/15 · Ce tan(θ/2) √(2g) (h + kh)^2.5.
 *
 * <p>At 90° Ce = 0.578 and kh = 0.85 mm; at other angles from 25° to 100° Ce and kh follow
 * polynomials in the angle, beyond them they are those of the nearer end.
 *
 * <p>Source: Shen, J. (1981), Discharge characteristics of triangular-notch thin-plate weirs, USGS
 * Water-Supply Paper 1617-B, adopted by ISO 1438. The polynomials are a fit to its curves, seen in
 * the library reach.rate for R, which cites Shen and the Water Measurement Manual of the US Bureau
 * of Reclamation, section 7-7; Shen's own table was not seen.
 *
 * @param angleDegrees θ, the whole angle of the notch, greater than 0 and less than 180
 */
public record VNotchWeir(double angleDegrees) implements Weir {
  private static final double FOOT_M = 0.3048;
  private static final double RIGHT_ANGLE_COEFFICIENT = 0.578;
  private static final double RIGHT_ANGLE_ADDITION_M = 0.00085;
  private static final double LEAST_TESTED_DEGREES = 25;
  private static final double GREATEST_TESTED_DEGREES = 100;

  public VNotchWeir {
    Require.positive("angle of the notch", angleDegrees, "°");
    Require.below("angle of the notch", angleDegrees, 180, "°");
  }

  private boolean isRightAngle() {
    return angleDegrees == 90;
  }

  private double testedDegrees() {
    return Math.min(GREATEST_TESTED_DEGREES, Math.max(LEAST_TESTED_DEGREES, angleDegrees));
  }

  private double dischargeCoefficient() {
    double t = testedDegrees();
    return isRightAngle()
        ? RIGHT_ANGLE_COEFFICIENT
        : 0.607165052 + t * (-0.000874466963 + t * 6.10393334e-6);
  }

  private double headAdditionM() {
    double t = testedDegrees();
    return isRightAngle()
        ? RIGHT_ANGLE_ADDITION_M
        : FOOT_M * (0.0144902648 + t * (-0.00033955535 + t * (3.29819003e-6 - t * 1.06215442e-8)));
  }

  private double factor() {
    double halfAngle = Math.toRadians(angleDegrees) / 2;
    return 8.0
        / 15
        * dischargeCoefficient()
        * Math.tan(halfAngle)
        * Math.sqrt(2 * Gravity.STANDARD_M_PER_S2);
  }

  @Override
  public double flowAt(double headM) {
    double he = EffectiveHead.at(headM, headAdditionM());
    return factor() * he * he * Math.sqrt(he);
  }

  @Override
  public double flowSlopeAt(double headM) {
    double he = EffectiveHead.at(headM, headAdditionM());
    return 2.5 * factor() * he * Math.sqrt(he) * EffectiveHead.slopeAt(headM, headAdditionM());
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
