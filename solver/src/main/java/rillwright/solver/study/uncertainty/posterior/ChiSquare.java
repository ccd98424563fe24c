package rillwright.solver.study.uncertainty.posterior;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/** Whether a sum of squared deviations is larger than chance allows. */
public final class ChiSquare {
  private ChiSquare() {}

  /** The chance that the sum of so many squares of standard normal variables exceeds a value. */
  public static double exceeds(double value, int squares) {
    return squares == 0 ? 1 : ChiSquaredDistribution.of(squares).survivalProbability(value);
  }
}
