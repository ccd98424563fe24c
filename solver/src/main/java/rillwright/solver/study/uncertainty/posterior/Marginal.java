package rillwright.solver.study.uncertainty.posterior;

import org.apache.commons.statistics.distribution.NormalDistribution;
import rillwright.solver.study.uncertainty.Distribution;

/**
 * An unknown as a function of a standard normal variable, read off a table, so that it costs
 * nothing to ask; straight between its entries, a fiftieth of a deviation apart.
 */
final class Marginal {
  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
  private static final double FARTHEST = 5;
  private static final int A_DEVIATION = 50;

  private final double[] table;
  private final double middle;
  private final double width;

  /**
   * An unknown between two of its chances.
   *
   * @param from 0 unless it is known to be above one of its quantiles
   * @param to 1 unless it is known to be below one
   */
  Marginal(Distribution distribution, double from, double to) {
    this.table = new double[(int) (2 * FARTHEST * A_DEVIATION) + 1];
    for (int i = 0; i < table.length; i++) {
      double below = STANDARD.cumulativeProbability(i / (double) A_DEVIATION - FARTHEST);
      table[i] = distribution.quantile(from + (to - from) * below);
    }
    this.middle = at(0);
    this.width = (at(1) - at(-1)) / 2;
  }

  /** The value at a standard normal variable. */
  double at(double deviate) {
    double place = (Math.max(-FARTHEST, Math.min(FARTHEST, deviate)) + FARTHEST) * A_DEVIATION;
    int below = Math.min((int) place, table.length - 2);
    return table[below] + (place - below) * (table[below + 1] - table[below]);
  }

  /** The value in half widths of the middle two thirds, from the middle; 0 of one that is fixed. */
  double scaled(double deviate) {
    return width > 0 ? (at(deviate) - middle) / width : 0;
  }

  /** The standard normal variable that has a chance below it. */
  static double deviateOf(double chance) {
    return STANDARD.inverseCumulativeProbability(chance);
  }
}
