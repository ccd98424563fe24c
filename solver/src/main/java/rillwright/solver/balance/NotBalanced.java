package rillwright.solver.balance;

import java.util.Locale;

/**
 * Thrown when no balance was found in the allowed number of steps: a defect, since every sound
 * problem has one.
 */
public final class NotBalanced extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int iterations;
  private final double flowErrorM3PerS;
  private final double headErrorM;

  /**
   * No balance.
   *
   * @param iterations steps taken
   * @param flowErrorM3PerS largest flow error at the end, m³/s
   * @param headErrorM largest head error at the end, m
   */
  public NotBalanced(int iterations, double flowErrorM3PerS, double headErrorM) {
    super(
        String.format(
            Locale.ROOT,
            "no balance after %d steps: flows are off by up to %.3g m3/s and heads by up to %.3g m",
            iterations,
            flowErrorM3PerS,
            headErrorM));
    this.iterations = iterations;
    this.flowErrorM3PerS = flowErrorM3PerS;
    this.headErrorM = headErrorM;
  }

  /** Steps taken. */
  public int iterations() {
    return iterations;
  }

  /** Largest flow error at the end, m³/s. */
  public double flowErrorM3PerS() {
    return flowErrorM3PerS;
  }

  /** Largest head error at the end, m. */
  public double headErrorM() {
    return headErrorM;
  }
}
