package rillwright.solver.study.uncertainty;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * How much of the variance of what comes out goes back to one quantity alone: the variance of the
 * mean outcome at a known value of the quantity, Var(E[Y|X]).
 *
 * <p>The samples are sorted by the quantity into classes of equal number; in each class the outcome
 * is fitted by a straight line. What the lines explain, less what they would explain by chance, is
 * the variance sought; what cannot be distinguished from chance is 0. No further balances are
 * needed.
 *
 * <p>Sources: Sobol', I. M. (1993), "Sensitivity estimates for nonlinear mathematical models",
 * Mathematical Modelling and Computational Experiments 1(4), 407–414, for the measure; Plischke,
 * E., Borgonovo, E. and Smith, C. L. (2013), "Global sensitivity measures from given data",
 * European Journal of Operational Research 226(3), 536–550, for its estimate from classes. The
 * straight line in each class and the correction by degrees of freedom are ours: without them a
 * steep class counts as chance.
 */
final class MainEffect {
  private static final int LEAST_IN_A_CLASS = 8;

  /** Below this share of the mean an outcome does not vary: a balance is not exact to more. */
  private static final double EXACTNESS = 1e-7;

  private MainEffect() {}

  /**
   * Mean square of the difference from the mean, as of a sample: divided by one less. 0 of outcomes
   * that are all alike, or of fewer than two.
   */
  static double variance(double[] outcomes) {
    if (outcomes.length < 2) {
      return 0;
    }
    double mean = mean(outcomes);
    double sum = 0;
    for (double outcome : outcomes) {
      sum += (outcome - mean) * (outcome - mean);
    }
    double variance = sum / (outcomes.length - 1);
    double noise = EXACTNESS * mean;
    return variance > noise * noise ? variance : 0;
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /** The numbers of the samples by a quantity's value, smallest first. */
  static int[] order(double[] values) {
    return IntStream.range(0, values.length)
        .boxed()
        .sorted(Comparator.comparingDouble(sample -> values[sample]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /**
   * The variance that one quantity alone explains, at least 0, in the outcome's unit squared.
   *
   * @param order of the samples by the quantity's value
   * @param values of the quantity in each sample
   * @param outcomes of each sample, as many
   */
  static double explainedVariance(int[] order, double[] values, double[] outcomes) {
    int samples = outcomes.length;
    double variance = variance(outcomes);
    int classes = classes(samples);
    int freedom = samples - 2 * classes;
    if (freedom < 1) {
      return 0;
    }
    double unexplained = 0;
    for (int i = 0; i < classes; i++) {
      int from = (int) ((long) i * samples / classes);
      int to = (int) ((long) (i + 1) * samples / classes);
      unexplained += aboutItsLine(order, from, to, values, outcomes);
    }
    double explained = Math.min(variance, variance - unexplained / freedom);
    return explained > byChance(samples, classes) * variance ? explained : 0;
  }

  /** About the cube root of the number of samples. */
  private static int classes(int samples) {
    return Math.max(1, Math.min((int) Math.cbrt(samples), samples / LEAST_IN_A_CLASS));
  }

  /**
   * The share that a quantity without any effect seems to have at most, in nineteen cases of
   * twenty: two standard deviations of what 2 m − 1 free numbers explain of n samples of noise.
   */
  private static double byChance(int samples, int classes) {
    return 2 * Math.sqrt(2.0 * (2 * classes - 1)) / samples;
  }

  /** Sum of the squares of what a straight line through a class leaves. */
  private static double aboutItsLine(
      int[] order, int from, int to, double[] values, double[] outcomes) {
    double meanX = 0;
    double meanY = 0;
    for (int i = from; i < to; i++) {
      meanX += values[order[i]];
      meanY += outcomes[order[i]];
    }
    meanX /= to - from;
    meanY /= to - from;
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = from; i < to; i++) {
      double x = values[order[i]] - meanX;
      double y = outcomes[order[i]] - meanY;
      xx += x * x;
      xy += x * y;
      yy += y * y;
    }
    return xx > 0 ? Math.max(0, yy - xy * xy / xx) : yy;
  }
}
