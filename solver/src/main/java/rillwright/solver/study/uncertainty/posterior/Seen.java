package rillwright.solver.study.uncertainty.posterior;

/**
 * Something that was seen or not. What is predicted is the probability that it is seen; its
 * deviation is the root of its deviance, −2 ln of how likely what was seen is.
 *
 * @param isSeen whether it was
 */
public record Seen(boolean isSeen) implements Evidence {
  private static final double LEAST = 1e-3;

  /** A stand-in's probability may be quite wrong: it counts less than it says. */
  private static final double LEAST_OF_A_STAND_IN = 0.1;

  @Override
  public double deviations(double predicted) {
    return (isSeen ? 1 : -1) * Math.sqrt(-2 * Math.log(likely(predicted, LEAST)));
  }

  @Override
  public double misfit(double predicted) {
    return Double.isNaN(predicted) ? predicted : 0;
  }

  @Override
  public double deviationAt(double predicted) {
    double chance = likely(predicted, LEAST);
    return Math.sqrt(chance * (1 - chance));
  }

  @Override
  public double logDensity(double predicted, double extraVariance) {
    return Math.log(likely(predicted, extraVariance > 0 ? LEAST_OF_A_STAND_IN : LEAST));
  }

  /** How likely what was seen is; NaN where nothing is predicted. */
  private double likely(double predicted, double least) {
    double chance = isSeen ? predicted : 1 - predicted;
    return Math.max(least, Math.min(1 - least, chance));
  }
}
