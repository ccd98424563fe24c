package rillwright.solver.balance;

import java.util.Locale;

/**
 * Thrown when the search did not end in the allowed number of steps: a defect of ours, since every
 * sound problem has a balance. A network that has none is refused before anything is searched.
 */
public final class SearchFailed extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int iterations;
  private final double flowErrorM3PerS;
  private final double headErrorM;

  /**
   * A search that did not end.
   *
   * @param iterations steps taken
   * @param flowErrorM3PerS largest flow error at the end, m³/s
   * @param headErrorM largest head error at the end, m
   */
  public SearchFailed(int iterations, double flowErrorM3PerS, double headErrorM) {
    super(
        String.format(
            Locale.ROOT,
            "the search for the balance did not end in %d steps: flows are off by up to %.3g m3/s"
                + " and heads by up to %.3g m",
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
