package rillwright.solver.study.uncertainty.posterior;

import java.util.List;

/** What comes of one set of values. */
final class Sample {
  private final double[] deviates;
  private final double[] values;
  private final double[] outcome;

  /**
   * A set of values.
   *
   * @param deviates the values as standard normal variables
   * @param values of the unknowns
   * @param outcome what would be read, and what else is asked for
   */
  Sample(double[] deviates, double[] values, double[] outcome) {
    this.deviates = deviates;
    this.values = values;
    this.outcome = outcome;
  }

  double[] deviates() {
    return deviates;
  }

  double[] values() {
    return values;
  }

  double[] outcome() {
    return outcome;
  }

  /** Logarithm of how likely it makes what was read; −∞ where there would be nothing to read. */
  double logLikelihood(List<Evidence> evidence) {
    double sum = 0;
    for (int i = 0; i < evidence.size(); i++) {
      sum += evidence.get(i).logDensity(outcome[i], 0);
    }
    return Double.isNaN(sum) ? Double.NEGATIVE_INFINITY : sum;
  }

  /** Sum of the squared deviations of what was read; ∞ where there would be nothing to read. */
  double misfit(List<Evidence> evidence) {
    double sum = 0;
    for (int i = 0; i < evidence.size(); i++) {
      sum += evidence.get(i).misfit(outcome[i]);
    }
    return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum;
  }

  /** Sum of the squares of its deviates. */
  double farness() {
    double sum = 0;
    for (double deviate : deviates) {
      sum += deviate * deviate;
    }
    return sum;
  }
}
