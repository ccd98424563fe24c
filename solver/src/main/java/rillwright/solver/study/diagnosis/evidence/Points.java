package rillwright.solver.study.diagnosis.evidence;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.reading.Span;

/**
 * Sizes that a fault or two may have: how much each weighs, and what everything would read at it.
 */
public final class Points {
  private final Scope scope;
  private final double[] weight;
  private final double[][] values;

  /**
   * Some sizes.
   *
   * @param weight of each, whatever their sum
   * @param values what everything would read at each
   */
  public Points(Scope scope, double[] weight, double[][] values) {
    this.scope = scope;
    this.weight = weight.clone();
    this.values = values.clone();
  }

  public int count() {
    return weight.length;
  }

  public double[] values(int point) {
    return values[point];
  }

  /** What is believed of them when something was read. */
  public Weighed given(Likelihood likelihood) {
    double[] log = new double[weight.length];
    double highest = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < log.length; k++) {
      log[k] = likelihood.log(values[k]);
      highest = Math.max(highest, log[k]);
    }
    double[] posterior = new double[weight.length];
    double sum = 0;
    double all = 0;
    for (int k = 0; k < log.length; k++) {
      posterior[k] = weight[k] * Math.exp(log[k] - highest);
      sum += posterior[k];
      all += weight[k];
    }
    for (int k = 0; k < log.length; k++) {
      posterior[k] /= sum;
    }
    return new Weighed(
        posterior, sum > 0 ? highest + Math.log(sum / all) : Double.NEGATIVE_INFINITY);
  }

  /** The sizes with how likely each is. */
  public class Weighed implements Belief {
    private static final double TRIFLE = 1e-6;

    private final double[] posterior;
    private final double logEvidence;

    Weighed(double[] posterior, double logEvidence) {
      this.posterior = posterior;
      this.logEvidence = logEvidence;
    }

    @Override
    public double logEvidence() {
      return logEvidence;
    }

    @Override
    public OptionalDouble size() {
      return OptionalDouble.empty();
    }

    /** The mean of something that each size has; empty if there is no size. */
    public OptionalDouble meanOf(double[] each) {
      double mean = 0;
      for (int k = 0; k < posterior.length; k++) {
        mean += posterior[k] * each[k];
      }
      return posterior.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(mean);
    }

    /** The likeliest; 0 if there is none. */
    public int best() {
      int best = 0;
      for (int k = 0; k < posterior.length; k++) {
        best = posterior[k] > posterior[best] ? k : best;
      }
      return best;
    }

    @Override
    public OptionalDouble mean(int readable) {
      double sum = 0;
      double mean = 0;
      for (int k = 0; k < posterior.length; k++) {
        if (!Double.isNaN(values[k][readable])) {
          sum += posterior[k];
          mean += posterior[k] * values[k][readable];
        }
      }
      return sum > 0.5 ? OptionalDouble.of(mean / sum) : OptionalDouble.empty();
    }

    @Override
    public Optional<Span> span(int readable) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < posterior.length; k++) {
        double value = values[k][readable];
        if (posterior[k] > TRIFLE && !Double.isNaN(value)) {
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
      }
      return low <= high ? Optional.of(new Span(low, high)) : Optional.empty();
    }

    @Override
    public void addDensity(int readable, Grid grid) {
      double[] bins = new double[grid.mass.length];
      for (int k = 0; k < posterior.length; k++) {
        if (!Double.isNaN(values[k][readable])) {
          bins[grid.cellOf(values[k][readable])] += posterior[k];
        }
      }
      for (int cell = 0; cell < bins.length; cell++) {
        if (bins[cell] > TRIFLE) {
          grid.spread(cell, bins[cell], scope.usualDeviation(readable, grid.valueOf(cell)));
        }
      }
    }
  }
}
