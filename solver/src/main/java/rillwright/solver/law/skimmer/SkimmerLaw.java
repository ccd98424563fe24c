package rillwright.solver.law.skimmer;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.HeadLaw;

/**
 * Fall of the water level over a skimmer's sill: Q = Qfree (1 − (h2/h1)^1.5)^0.385 with Qfree = ⅔
 * Cd (1 − c) b √(2g) h1^1.5, h1 the level of the open water above the sill and h2 that downstream
 * of it. Qfree is the greatest flow; nothing comes back.
 *
 * <p>Source: Villemonte, J. R. (1947), "Submerged-weir discharge studies", Engineering News-Record,
 * Dec. 25, 866–869 (from memory). The coefficients are common practice.
 *
 * @param freeFlowM3PerS Qfree, m³/s, 0 or more
 * @param depthOverSillM h1, m, 0 or more
 */
public record SkimmerLaw(double freeFlowM3PerS, double depthOverSillM) implements HeadLaw {
  private static final double DROWNING_EXPONENT = 0.385;

  public SkimmerLaw {
    Require.atLeast("free flow", freeFlowM3PerS, 0, "m³/s");
    Require.atLeast("depth over the sill", depthOverSillM, 0, "m");
  }

  /**
   * A mouth at a level of the open water.
   *
   * @param dischargeCoefficient Cd, dimensionless
   * @param openWidthM (1 − c) b, the width that is not clogged, m
   * @param depthOverSillM level of the open water above the sill, m; negative passes nothing
   */
  public static SkimmerLaw ofMouth(
      double dischargeCoefficient, double openWidthM, double depthOverSillM) {
    double depth = Math.max(0, depthOverSillM);
    double freeFlow =
        2.0
            / 3
            * dischargeCoefficient
            * openWidthM
            * Math.sqrt(2 * Gravity.STANDARD_M_PER_S2)
            * depth
            * Math.sqrt(depth);
    return new SkimmerLaw(freeFlow, depth);
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    if (freeFlowM3PerS == 0) {
      return 0;
    }
    // 1 − (1 − s^(1/0.385))^(2/3), without losing the last digits of a small share s.
    double power = Math.pow(share(flowM3PerS), 1 / DROWNING_EXPONENT);
    return -depthOverSillM * Math.expm1(2.0 / 3 * Math.log1p(-power));
  }

  /** Infinite at the greatest flow. */
  @Override
  public double slopeAt(double flowM3PerS) {
    if (freeFlowM3PerS == 0) {
      return 0;
    }
    double share = share(flowM3PerS);
    double power = Math.pow(share, 1 / DROWNING_EXPONENT - 1);
    double drowned = 1 - power * share;
    return depthOverSillM
        * (2.0 / 3)
        / Math.cbrt(drowned)
        * power
        / (DROWNING_EXPONENT * freeFlowM3PerS);
  }

  private double share(double flowM3PerS) {
    return Math.min(1, Math.max(0, flowM3PerS / freeFlowM3PerS));
  }

  @Override
  public double leastFlow() {
    return 0;
  }

  @Override
  public double greatestFlow() {
    return freeFlowM3PerS;
  }
}
