package rillwright.solver.study.uncertainty.posterior;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What is known of unknowns and of what comes of them.
 *
 * @param draws sets of values with what comes of each; at least one
 * @param chiSquare how far what was read is from all that is possible: the least sum of the squared
 *     deviations of the readings and of the unknowns, each in standard deviations; what was seen or
 *     not does not count
 */
public record Posterior(List<Draw> draws, double chiSquare) {
  public Posterior {
    draws = List.copyOf(draws);
  }

  /**
   * A set of values.
   *
   * @param weight how likely it is beside the others, 0 or more
   * @param values of the unknowns
   * @param outcome what comes of them
   */
  public record Draw(double weight, List<Double> values, List<Double> outcome) {
    public Draw {
      values = List.copyOf(values);
      outcome = List.copyOf(outcome);
    }
  }

  /** Low, middle and high: below them lie 5, 50 and 95 % of what is likely. */
  public record Band(double p5, double p50, double p95) {

    /** From the low to the high end. */
    public double width() {
      return p95 - p5;
    }
  }

  /** The band of an unknown. */
  public Band ofValue(int unknown) {
    return band(draw -> draw.values().get(unknown));
  }

  /** The band of a piece of what comes out; draws where there is none do not count. */
  public Band ofOutcome(int piece) {
    return band(draw -> draw.outcome().get(piece));
  }

  /** The band of something that each draw has; NaN does not count. */
  public Band band(ToDoubleFunction<Draw> of) {
    List<double[]> sorted =
        draws.stream()
            .map(draw -> new double[] {of.applyAsDouble(draw), draw.weight()})
            .filter(pair -> !Double.isNaN(pair[0]) && pair[1] > 0)
            .sorted(Comparator.comparingDouble(pair -> pair[0]))
            .toList();
    return new Band(percentile(sorted, 0.05), percentile(sorted, 0.5), percentile(sorted, 0.95));
  }

  /** The value below which a share of the weight lies, straight between the draws' middles. */
  private static double percentile(List<double[]> sorted, double share) {
    if (sorted.isEmpty()) {
      return Double.NaN;
    }
    double wanted = share * sorted.stream().mapToDouble(pair -> pair[1]).sum();
    double passed = 0;
    double lastMiddle = Double.NEGATIVE_INFINITY;
    double last = sorted.get(0)[0];
    for (double[] pair : sorted) {
      double middle = passed + pair[1] / 2;
      if (middle >= wanted) {
        double part =
            Double.isInfinite(lastMiddle) ? 1 : (wanted - lastMiddle) / (middle - lastMiddle);
        return last + part * (pair[0] - last);
      }
      passed += pair[1];
      lastMiddle = middle;
      last = pair[0];
    }
    return last;
  }

  /** The mean of something that each draw has; NaN does not count. */
  public double mean(ToDoubleFunction<Draw> of) {
    double sum = 0;
    double weights = 0;
    for (Draw draw : draws) {
      double value = of.applyAsDouble(draw);
      if (!Double.isNaN(value)) {
        sum += draw.weight() * value;
        weights += draw.weight();
      }
    }
    return sum / weights;
  }

  /** How many unweighted draws these are as good as. */
  public double effectiveDraws() {
    return draws.size()
        * TemperedSampling.keptOf(draws.stream().mapToDouble(Draw::weight).toArray());
  }

  /** Some draws alike, chosen by weight at even steps. */
  public List<Draw> evenly(int count) {
    double sum = draws.stream().mapToDouble(Draw::weight).sum();
    double[] passed = new double[draws.size()];
    double before = 0;
    for (int i = 0; i < passed.length; i++) {
      before += draws.get(i).weight();
      passed[i] = before;
    }
    return IntStream.range(0, count)
        .mapToObj(i -> draws.get(first(passed, (i + 0.5) / count * sum)))
        .toList();
  }

  private static int first(double[] passed, double wanted) {
    int i = 0;
    while (i < passed.length - 1 && passed[i] < wanted) {
      i++;
    }
    return i;
  }
}
