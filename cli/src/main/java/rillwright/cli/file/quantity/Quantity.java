package rillwright.cli.file.quantity;

import java.util.List;
import java.util.Optional;
import rillwright.solver.study.uncertainty.CutNormal;
import rillwright.solver.study.uncertainty.DiscreteUniform;
import rillwright.solver.study.uncertainty.Distribution;
import rillwright.solver.study.uncertainty.EvenDistribution;

/**
 * A quantity as it is known.
 *
 * @param middle what to compute with, in the base unit of its measure (SI where there is one)
 * @param spread how far it may be off
 */
public record Quantity(double middle, Spread spread) {

  /** How far a quantity may be off. */
  public sealed interface Spread {

    /**
     * What is known of a quantity with this spread; empty if it is known exactly.
     *
     * @param middle of it
     * @param valid what it may be
     */
    Optional<Distribution> about(double middle, Range valid);
  }

  /** Taken as known exactly. */
  public record Exact() implements Spread {
    @Override
    public Optional<Distribution> about(double middle, Range valid) {
      return Optional.empty();
    }
  }

  /**
   * Normal about the middle, cut off at what is valid.
   *
   * @param halfWidth half the width of the 95 % interval, greater than 0
   */
  public record Normal(double halfWidth) implements Spread {
    private static final double HALF_WIDTHS_A_DEVIATION = 0.5;

    @Override
    public Optional<Distribution> about(double middle, Range valid) {
      return Optional.of(
          new CutNormal(
              middle,
              HALF_WIDTHS_A_DEVIATION * halfWidth,
              valid.leastBelievable(),
              valid.greatest()));
    }
  }

  /**
   * Below the middle as likely as above it, and anything on either side alike.
   *
   * @param least the lower end
   * @param greatest the upper end, above it
   */
  public record Even(double least, double greatest) implements Spread {
    @Override
    public Optional<Distribution> about(double middle, Range valid) {
      return Optional.of(new EvenDistribution(least, middle, greatest));
    }
  }

  /**
   * One of some values, all as likely.
   *
   * @param labels what each is called, in their order; copied
   * @param values rising, two or more; copied
   */
  public record Choice(List<String> labels, List<Double> values) implements Spread {
    public Choice {
      labels = List.copyOf(labels);
      values = List.copyOf(values);
    }

    @Override
    public Optional<Distribution> about(double middle, Range valid) {
      return Optional.of(new DiscreteUniform(values));
    }
  }

  /** A quantity that is known by a middle and two ends. */
  public static Quantity between(double least, double middle, double greatest) {
    return new Quantity(middle, least < greatest ? new Even(least, greatest) : new Exact());
  }

  /** A quantity that is known exactly. */
  public static Quantity exactly(double value) {
    return new Quantity(value, new Exact());
  }

  /** Whether it is taken as known exactly. */
  public boolean isExact() {
    return spread instanceof Exact;
  }
}
