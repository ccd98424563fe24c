package rillwright.solver.study.uncertainty.posterior;

import java.util.function.DoubleUnaryOperator;

/**
 * Something that was read.
 *
 * @param read what it showed
 * @param deviationAt standard deviation of its normal error where something else is predicted,
 *     greater than 0
 */
public record Evidence(double read, DoubleUnaryOperator deviationAt) {

  /** By how many standard deviations it is above what is predicted. */
  public double deviations(double predicted) {
    return (read - predicted) / deviationAt.applyAsDouble(predicted);
  }

  /**
   * Logarithm of its density.
   *
   * @param extraVariance of what is predicted
   */
  double logDensity(double predicted, double extraVariance) {
    double deviation = deviationAt.applyAsDouble(predicted);
    double variance = deviation * deviation + extraVariance;
    double off = read - predicted;
    return -0.5 * (off * off / variance + Math.log(variance));
  }
}
