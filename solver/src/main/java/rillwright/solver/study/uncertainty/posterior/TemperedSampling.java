package rillwright.solver.study.uncertainty.posterior;

import java.util.Arrays;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/**
 * Draws from a standard normal distribution that is weighted by a likelihood: the likelihood is
 * raised to a power that grows from 0 to 1, and at each power the draws are chosen anew by weight
 * and moved by Metropolis steps.
 *
 * <p>Source: Del Moral, Doucet and Jasra (2006), "Sequential Monte Carlo samplers", Journal of the
 * Royal Statistical Society B 68(3), 411–436 (from memory); the steps' scale of 2.38/√n after
 * Gelman, Roberts and Gilks (1996) (from memory).
 */
final class TemperedSampling {
  private static final double KEEPS = 0.5;
  private static final int MOVES = 6;
  private static final int LAST_MOVES = 20;
  private static final double STEP = 2.38;
  private static final double ACCEPTED = 0.25;

  private final ToDoubleFunction<double[]> logLikelihood;
  private final Random random;
  private final double[][] draws;
  private final double[] logs;
  private double power;
  private double logEvidence;
  private double step;

  private TemperedSampling(
      int unknowns, int count, ToDoubleFunction<double[]> logLikelihood, long seed) {
    this.logLikelihood = logLikelihood;
    this.random = new Random(seed);
    this.draws = new double[count][unknowns];
    this.logs = new double[count];
    this.step = STEP / Math.sqrt(unknowns);
  }

  /**
   * Draws.
   *
   * @param count how many
   * @param logLikelihood logarithm of the likelihood, which is finite
   */
  static TemperedSampling run(
      int unknowns, int count, ToDoubleFunction<double[]> logLikelihood, long seed) {
    TemperedSampling annealing = new TemperedSampling(unknowns, count, logLikelihood, seed);
    annealing.start();
    while (annealing.power < 1) {
      annealing.raise();
    }
    return annealing;
  }

  /** The draws. */
  double[][] draws() {
    return draws;
  }

  /** Logarithm of the mean likelihood of the standard normal distribution. */
  double logEvidence() {
    return logEvidence;
  }

  private void start() {
    for (int i = 0; i < draws.length; i++) {
      for (int j = 0; j < draws[i].length; j++) {
        draws[i][j] = random.nextGaussian();
      }
      logs[i] = logLikelihood.applyAsDouble(draws[i]);
    }
  }

  private void raise() {
    double more = 1 - power;
    if (kept(more) < KEEPS) {
      double low = 0;
      double high = more;
      for (int i = 0; i < 40; i++) {
        more = (low + high) / 2;
        if (kept(more) < KEEPS) {
          high = more;
        } else {
          low = more;
        }
      }
    }
    double[] weights = weights(more);
    double sum = Arrays.stream(weights).sum();
    logEvidence += Math.log(sum / weights.length) + more * highest();
    Factor spread = Factor.of(covariance(weights, sum));
    choose(weights, sum);
    power = Math.min(1, power + more);
    int moves = power < 1 ? MOVES : LAST_MOVES;
    for (int i = 0; i < moves; i++) {
      move(spread);
    }
  }

  private double highest() {
    return Arrays.stream(logs).max().orElseThrow();
  }

  private double[] weights(double more) {
    double highest = highest();
    return Arrays.stream(logs).map(log -> Math.exp(more * (log - highest))).toArray();
  }

  /** How much of the draws is left when they are weighted, 0 to 1. */
  private double kept(double more) {
    return keptOf(weights(more));
  }

  /** How many draws as good as unweighted ones weighted draws are, as a share. */
  static double keptOf(double[] weights) {
    double sum = 0;
    double squares = 0;
    for (double weight : weights) {
      sum += weight;
      squares += weight * weight;
    }
    return squares > 0 ? sum * sum / squares / weights.length : 0;
  }

  private double[][] covariance(double[] weights, double sum) {
    int size = draws[0].length;
    double[] mean = new double[size];
    for (int i = 0; i < draws.length; i++) {
      for (int j = 0; j < size; j++) {
        mean[j] += weights[i] / sum * draws[i][j];
      }
    }
    double[][] covariance = new double[size][size];
    for (int i = 0; i < draws.length; i++) {
      for (int j = 0; j < size; j++) {
        for (int k = 0; k <= j; k++) {
          covariance[j][k] += weights[i] / sum * (draws[i][j] - mean[j]) * (draws[i][k] - mean[k]);
        }
      }
    }
    for (int j = 0; j < size; j++) {
      covariance[j][j] += 1e-9;
    }
    return covariance;
  }

  /** Each as often as it weighs, at even steps through their sum. */
  private void choose(double[] weights, double sum) {
    double[][] before = new double[draws.length][];
    double[] logsBefore = logs.clone();
    for (int i = 0; i < draws.length; i++) {
      before[i] = draws[i];
    }
    double at = random.nextDouble();
    double passed = weights[0];
    int chosen = 0;
    for (int i = 0; i < draws.length; i++) {
      double wanted = (i + at) / draws.length * sum;
      while (passed < wanted && chosen < draws.length - 1) {
        passed += weights[++chosen];
      }
      draws[i] = before[chosen].clone();
      logs[i] = logsBefore[chosen];
    }
  }

  private void move(Factor spread) {
    int accepted = 0;
    int size = draws[0].length;
    double[] noise = new double[size];
    for (int i = 0; i < draws.length; i++) {
      for (int j = 0; j < size; j++) {
        noise[j] = random.nextGaussian();
      }
      double[] moved = spread.times(noise);
      double farther = 0;
      for (int j = 0; j < size; j++) {
        moved[j] = draws[i][j] + step * moved[j];
        farther += moved[j] * moved[j] - draws[i][j] * draws[i][j];
      }
      double log = logLikelihood.applyAsDouble(moved);
      if (Math.log(random.nextDouble()) < power * (log - logs[i]) - farther / 2) {
        draws[i] = moved;
        logs[i] = log;
        accepted++;
      }
    }
    step *= Math.exp((double) accepted / draws.length - ACCEPTED);
  }
}
