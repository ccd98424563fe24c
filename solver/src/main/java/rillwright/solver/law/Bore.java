package rillwright.solver.law;

import rillwright.solver.invariant.Require;

/**
 * The circular inside of a pipe or fitting.
 *
 * @param diameterM inside diameter, m, greater than 0
 */
public record Bore(double diameterM) {
  public Bore {
    Require.positive("bore", diameterM, "m");
  }

  /** Cross-section, m². */
  public double areaM2() {
    return Math.PI / 4 * diameterM * diameterM;
  }

  /** Mean velocity at a flow, m/s, with the sign of the flow. */
  public double velocityAt(double flowM3PerS) {
    return flowM3PerS / areaM2();
  }

  /** Velocity head V²/2g at a flow, m; never negative. */
  public double velocityHeadAt(double flowM3PerS) {
    double velocity = velocityAt(flowM3PerS);
    return velocity * velocity / (2 * Gravity.STANDARD_M_PER_S2);
  }

  /** Froude number v/√(g D) at a flow, dimensionless; never negative. */
  public double froudeNumberAt(double flowM3PerS) {
    return Math.abs(velocityAt(flowM3PerS)) / Math.sqrt(Gravity.STANDARD_M_PER_S2 * diameterM);
  }

  /** A bore so many times as wide. */
  public Bore times(double factor) {
    return new Bore(factor * diameterM);
  }
}
