package rillwright.solver.study.diagnosis.inference;

/**
 * Student's t-distribution with 5 degrees of freedom: near the normal one for errors as they should
 * be, and not shaken by one reading that is wrong.
 *
 * <p>Source: Student (1908), "The probable error of a mean", Biometrika 6(1), 1–25 (from memory);
 * the cumulative distribution for odd degrees of freedom by elementary integration.
 */
final class StudentT {
  private static final double DEGREES = 5;

  /** Γ(3) / (√(5π) Γ(5/2)) = 8 / (3 π √5). */
  private static final double PEAK = 8 / (3 * Math.PI * Math.sqrt(DEGREES));

  private StudentT() {}

  /** Density at z standard deviations, for a deviation of 1. */
  static double density(double z) {
    double base = 1 + z * z / DEGREES;
    return PEAK / (base * base * base);
  }

  /** Natural logarithm of the density. */
  static double logDensity(double z) {
    return Math.log(PEAK) - 3 * Math.log1p(z * z / DEGREES);
  }

  /** Probability of less than z. */
  static double below(double z) {
    double root = z / Math.sqrt(DEGREES);
    double base = 1 + root * root;
    return 0.5 + (Math.atan(root) + root / base * (1 + 2 / (3 * base))) / Math.PI;
  }
}
