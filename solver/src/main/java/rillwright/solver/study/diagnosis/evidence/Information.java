package rillwright.solver.study.diagnosis.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.Span;

/**
 * How much a reading tells about the cause, to be expected: the mutual information between the two,
 * the entropy of the reading less its entropy with the cause known.
 *
 * <p>Source: Shannon, C. E. (1948), "A mathematical theory of communication", Bell System Technical
 * Journal 27; Lindley, D. V. (1956), "On a measure of the information provided by an experiment",
 * Annals of Mathematical Statistics 27(4) (both from memory).
 */
public final class Information {
  private static final int FEWEST_CELLS = 60;
  private static final int MOST_CELLS = 800;
  private static final double CELLS_A_DEVIATION = 3;
  private static final double MARGIN_DEVIATIONS = 5;

  /** Causes less likely than this tell nothing. */
  private static final double UNLIKELY = 1e-4;

  private static final double UNKNOWN = 0.5;

  private final Scope scope;

  public Information(Scope scope) {
    this.scope = scope;
  }

  /**
   * Bits that a readable tells about which of some causes is at work.
   *
   * @param beliefs of the causes
   * @param probability of each; their sum is not 0
   */
  public double bits(int readable, List<Belief> beliefs, double[] probability) {
    List<Belief> likely = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (int c = 0; c < probability.length; c++) {
      if (probability[c] > UNLIKELY) {
        likely.add(beliefs.get(c));
        shares.add(probability[c]);
      }
    }
    if (scope.readables().get(readable) instanceof Sight) {
      return seenOrNot(readable, likely, shares);
    }
    Optional<Span> span = span(readable, likely);
    return span.map(s -> bits(readable, likely, shares, s)).orElse(0.0);
  }

  /** What is seen or not: the entropy of the one answer less what is left with the cause known. */
  private static double seenOrNot(int readable, List<Belief> beliefs, List<Double> shares) {
    double sum = shares.stream().mapToDouble(share -> share).sum();
    double amiss = 0;
    double left = 0;
    for (int c = 0; c < beliefs.size(); c++) {
      double share = shares.get(c) / sum;
      double seen = beliefs.get(c).mean(readable).orElse(UNKNOWN);
      amiss += share * seen;
      left += share * entropyBits(seen);
    }
    return Math.max(0, entropyBits(amiss) - left);
  }

  private static double entropyBits(double chance) {
    return chance <= 0 || chance >= 1
        ? 0
        : -(chance * Math.log(chance) + (1 - chance) * Math.log(1 - chance)) / Math.log(2);
  }

  private Optional<Span> span(int readable, List<Belief> beliefs) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Belief belief : beliefs) {
      Optional<Span> span = belief.span(readable);
      if (span.isPresent()) {
        low = Math.min(low, span.get().least());
        high = Math.max(high, span.get().greatest());
      }
    }
    if (!(low <= high)) {
      return Optional.empty();
    }
    return Optional.of(
        new Span(
            low - MARGIN_DEVIATIONS * scope.usualDeviation(readable, low),
            high + MARGIN_DEVIATIONS * scope.usualDeviation(readable, high)));
  }

  private double bits(int readable, List<Belief> beliefs, List<Double> shares, Span span) {
    double finest =
        Math.min(
            scope.usualDeviation(readable, span.least()),
            scope.usualDeviation(readable, span.greatest()));
    int cells =
        (int)
            Math.max(FEWEST_CELLS, Math.min(MOST_CELLS, CELLS_A_DEVIATION * span.width() / finest));
    List<double[]> densities = new ArrayList<>();
    List<Double> kept = new ArrayList<>();
    double sum = 0;
    for (int c = 0; c < beliefs.size(); c++) {
      Grid grid = new Grid(span.least(), span.greatest(), cells);
      beliefs.get(c).addDensity(readable, grid);
      if (grid.normalise()) {
        densities.add(grid.mass);
        kept.add(shares.get(c));
        sum += shares.get(c);
      }
    }
    return mutual(densities, kept, sum);
  }

  private static double mutual(List<double[]> densities, List<Double> shares, double sum) {
    if (densities.size() < 2) {
      return 0;
    }
    double[] mixture = new double[densities.get(0).length];
    for (int c = 0; c < densities.size(); c++) {
      for (int k = 0; k < mixture.length; k++) {
        mixture[k] += shares.get(c) / sum * densities.get(c)[k];
      }
    }
    double nats = 0;
    for (int c = 0; c < densities.size(); c++) {
      double[] density = densities.get(c);
      for (int k = 0; k < mixture.length; k++) {
        if (density[k] > 0) {
          nats += shares.get(c) / sum * density[k] * Math.log(density[k] / mixture[k]);
        }
      }
    }
    return Math.max(0, nats / Math.log(2));
  }
}
