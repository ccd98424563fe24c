package rillwright.solver.study.uncertainty.posterior;

import java.util.List;

/**
 * A stand-in for a model near what was read: each reading as a quadratic of the unknowns, fitted to
 * samples by least squares, those that are near what was read counting most. What it misses by is
 * added to the reading's variance.
 */
final class ResponseSurface {
  /** So many samples, by weight, for each coefficient. */
  private static final double SAMPLES_A_TERM = 3;

  private static final double SMALL = 1e-9;

  private final List<Marginal> marginals;
  private final List<Evidence> evidence;
  private final boolean crossed;
  private final double[][] terms;
  private final double[] variance;

  private ResponseSurface(List<Marginal> marginals, List<Evidence> evidence, boolean crossed) {
    this.marginals = marginals;
    this.evidence = evidence;
    this.crossed = crossed;
    this.terms = new double[evidence.size()][];
    this.variance = new double[evidence.size()];
  }

  /** One fitted to samples. */
  static ResponseSurface of(
      List<Marginal> marginals, List<Evidence> evidence, List<Sample> samples) {
    int unknowns = marginals.size();
    List<Sample> readable =
        samples.stream().filter(it -> !Double.isInfinite(it.misfit(evidence))).toList();
    int whole = 1 + 2 * unknowns + unknowns * (unknowns - 1) / 2;
    boolean crossed = readable.size() > SAMPLES_A_TERM * whole;
    ResponseSurface stand = new ResponseSurface(marginals, evidence, crossed);
    int count = crossed ? whole : 1 + 2 * unknowns;
    double[] weights = weights(readable, evidence, SAMPLES_A_TERM * count);
    stand.fit(readable, weights, count);
    return stand;
  }

  /** The nearer to what was read, the more; as steep as leaves enough samples. */
  private static double[] weights(List<Sample> samples, List<Evidence> evidence, double enough) {
    double[] weights = new double[samples.size()];
    for (double reach = 1; ; reach *= 2) {
      double sum = 0;
      double squares = 0;
      for (int i = 0; i < weights.length; i++) {
        double near = 1 + samples.get(i).misfit(evidence) / (reach * evidence.size());
        weights[i] = 1 / (near * near);
        sum += weights[i];
        squares += weights[i] * weights[i];
      }
      if (sum * sum >= Math.min(enough, 0.7 * weights.length) * squares) {
        return weights;
      }
    }
  }

  private void fit(List<Sample> samples, double[] weights, int count) {
    double[][] features = new double[samples.size()][];
    double[][] matrix = new double[count][count];
    double total = 0;
    for (int s = 0; s < features.length; s++) {
      features[s] = features(samples.get(s).deviates());
      total += weights[s];
      for (int i = 0; i < count; i++) {
        double weighted = weights[s] * features[s][i];
        for (int j = 0; j <= i; j++) {
          matrix[i][j] += weighted * features[s][j];
        }
      }
    }
    for (int i = 0; i < count; i++) {
      matrix[i][i] += SMALL * (matrix[i][i] + total);
    }
    Factor factor = Factor.of(matrix);
    for (int r = 0; r < terms.length; r++) {
      double[] right = new double[count];
      for (int s = 0; s < features.length; s++) {
        for (int i = 0; i < count; i++) {
          right[i] += weights[s] * features[s][i] * samples.get(s).outcome()[r];
        }
      }
      terms[r] = factor.solve(right);
      double squares = 0;
      for (int s = 0; s < features.length; s++) {
        double off = samples.get(s).outcome()[r] - dot(terms[r], features[s]);
        squares += weights[s] * off * off;
      }
      variance[r] = squares / total * SAMPLES_A_TERM / (SAMPLES_A_TERM - 1);
    }
  }

  private double[] features(double[] deviates) {
    int unknowns = marginals.size();
    double[] scaled = new double[unknowns];
    for (int j = 0; j < unknowns; j++) {
      scaled[j] = marginals.get(j).scaled(deviates[j]);
    }
    double[] features =
        new double[1 + 2 * unknowns + (crossed ? unknowns * (unknowns - 1) / 2 : 0)];
    features[0] = 1;
    int next = 1;
    for (int j = 0; j < unknowns; j++) {
      features[next++] = scaled[j];
      features[next++] = scaled[j] * scaled[j];
      for (int k = 0; crossed && k < j; k++) {
        features[next++] = scaled[j] * scaled[k];
      }
    }
    return features;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  /** Logarithm of how likely unknowns make what was read. */
  double logLikelihood(double[] deviates) {
    double[] features = features(deviates);
    double sum = 0;
    for (int r = 0; r < terms.length; r++) {
      sum += evidence.get(r).logDensity(dot(terms[r], features), variance[r]);
    }
    return sum;
  }

  /** What would be read. */
  double[] predict(double[] deviates) {
    double[] features = features(deviates);
    double[] predicted = new double[terms.length];
    for (int r = 0; r < terms.length; r++) {
      predicted[r] = dot(terms[r], features);
    }
    return predicted;
  }
}
