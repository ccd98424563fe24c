package rillwright.solver.study.uncertainty;

import java.util.Arrays;

/**
 * The values below which given shares of a sample lie, straight between its sorted values.
 *
 * <p>Source: Hyndman, R. J. and Fan, Y. (1996), "Sample quantiles in statistical packages", The
 * American Statistician 50(4), 361–365, definition 7.
 */
final class Percentiles {
  private final double[] sorted;

  /** Of a sample of one value or more. */
  Percentiles(double[] sample) {
    if (sample.length == 0) {
      throw new IllegalArgumentException("percentiles of no sample");
    }
    this.sorted = sample.clone();
    Arrays.sort(sorted);
  }

  /**
   * The value below which a share lies.
   *
   * @param share 0 to 1
   */
  double at(double share) {
    double rank = share * (sorted.length - 1);
    int below = (int) Math.floor(rank);
    int above = Math.min(sorted.length - 1, below + 1);
    double low = sorted[below];
    return low + (rank - below) * (sorted[above] - low);
  }
}
