package rillwright.solver.study.uncertainty.posterior;

import java.util.function.DoubleUnaryOperator;

/**
 * A number that was read.
 *
 * @param read what it showed
 * @param deviation standard deviation of its normal error where something else is predicted,
 *     greater than 0
 */
public record Measured(double read, DoubleUnaryOperator deviation) implements Evidence {

  @Override
  public double deviations(double predicted) {
    return (read - predicted) / deviationAt(predicted);
  }

  @Override
  public double misfit(double predicted) {
    double off = deviations(predicted);
    return off * off;
  }

  @Override
  public double deviationAt(double predicted) {
    return deviation.applyAsDouble(predicted);
  }

  @Override
  public double logDensity(double predicted, double extraVariance) {
    double deviation = deviationAt(predicted);
    double variance = deviation * deviation + extraVariance;
    double off = read - predicted;
    return -0.5 * (off * off / variance + Math.log(variance));
  }
}
