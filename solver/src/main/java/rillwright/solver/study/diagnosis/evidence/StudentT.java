package rillwright.solver.study.diagnosis.evidence;

/**
 * Student's t-distribution with 7 degrees of freedom: near the normal one for errors as they should
 * be, and not shaken by one reading that is wrong.
 *
 * <p>Source: Student (1908), "The probable error of a mean", Biometrika 6(1), 1–25 (from memory);
 * the cumulative distribution for odd degrees of freedom by elementary integration.
 */
public final class StudentT {
  private static final double DEGREES = 7;

  /** Γ(4) / (√(7π) Γ(7/2)) = 16 / (5 π √7). */
  private static final double PEAK = 16 / (5 * Math.PI * Math.sqrt(DEGREES));

  private StudentT() {}

  /** Density at z standard deviations, for a deviation of 1. */
  public static double density(double z) {
    double base = 1 + z * z / DEGREES;
    double squared = base * base;
    return PEAK / (squared * squared);
  }

  /** Natural logarithm of the density. */
  public static double logDensity(double z) {
    return Math.log(PEAK) - 4 * Math.log1p(z * z / DEGREES);
  }

  /** Probability of less than z. */
  public static double below(double z) {
    double root = z / Math.sqrt(DEGREES);
    double base = 1 + root * root;
    double series = 1 + 2 / (3 * base) * (1 + 4 / (5 * base));
    return 0.5 + (Math.atan(root) + root / base * series) / Math.PI;
  }
}
