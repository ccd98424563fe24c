package rillwright.solver.study.uncertainty.posterior;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The least sum of the squared deviations of readings and of unknowns, each in standard deviations:
 * of a linear model of normal unknowns it is distributed as chi-square with as many degrees of
 * freedom as there are readings.
 *
 * <p>Source: Gauss–Newton steps on the sum of squares, with slopes of the stand-in; Tarantola, A.
 * (2005), "Inverse Problem Theory", SIAM, on the least value of the misfit (both from memory).
 *
 * @param model what comes of standard normal variables; empty where they are impossible
 */
record LeastMisfit(
    List<Marginal> marginals, List<Evidence> evidence, Function<double[], Optional<Sample>> model) {
  private static final int NEWTON_STEPS = 4;
  private static final double NUDGE = 1e-3;

  /** That from the best of some samples on; 0 without a reading. */
  double of(List<Sample> samples) {
    if (evidence.isEmpty()) {
      return 0;
    }
    Sample best = samples.get(0);
    for (Sample sample : samples) {
      best = squares(sample) < squares(best) ? sample : best;
    }
    ResponseSurface stand = ResponseSurface.of(marginals, evidence, samples);
    for (int step = 0; step < NEWTON_STEPS; step++) {
      Optional<Sample> next = model.apply(newton(best, stand));
      if (next.isEmpty() || !(squares(next.get()) < squares(best))) {
        break;
      }
      best = next.get();
    }
    return squares(best);
  }

  private double squares(Sample sample) {
    return sample.misfit(evidence) + sample.farness();
  }

  private double[] newton(Sample from, ResponseSurface stand) {
    int size = marginals.size();
    double[][] slopes = new double[size][];
    for (int j = 0; j < size; j++) {
      double[] up = from.deviates().clone();
      double[] down = from.deviates().clone();
      up[j] += NUDGE;
      down[j] -= NUDGE;
      double[] high = stand.predict(up);
      double[] low = stand.predict(down);
      slopes[j] = new double[high.length];
      for (int r = 0; r < high.length; r++) {
        double deviation = evidence.get(r).deviationAt(from.outcome()[r]);
        slopes[j][r] = (high[r] - low[r]) / (2 * NUDGE * deviation);
      }
    }
    double[][] matrix = new double[size][size];
    double[] right = new double[size];
    for (int j = 0; j < size; j++) {
      right[j] = -from.deviates()[j];
      for (int r = 0; r < evidence.size(); r++) {
        right[j] += slopes[j][r] * evidence.get(r).deviations(from.outcome()[r]);
        for (int k = 0; k <= j; k++) {
          matrix[j][k] += slopes[j][r] * slopes[k][r];
        }
      }
      matrix[j][j] += 1;
    }
    double[] step = Factor.of(matrix).solve(right);
    double[] next = new double[size];
    for (int j = 0; j < size; j++) {
      next[j] = from.deviates()[j] + step[j];
    }
    return next;
  }
}
