package rillwright.solver.law;

/**
 * The circular inside of a pipe or fitting.
 *
 * @param diameterM inside diameter, m, greater than 0
 */
public record Bore(double diameterM) {
  public Bore {
    if (!(diameterM > 0) || Double.isInfinite(diameterM)) {
      throw new IllegalArgumentException("bore is " + diameterM + " m; it must be greater than 0");
    }
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

  /** A bore so many times as wide. */
  public Bore times(double factor) {
    return new Bore(factor * diameterM);
  }
}
