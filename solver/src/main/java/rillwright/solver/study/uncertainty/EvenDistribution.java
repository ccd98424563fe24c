package rillwright.solver.study.uncertainty;

/**
 * Anything between two values alike.
 *
 * @param least the lower end
 * @param greatest the upper end, above it
 */
public record EvenDistribution(double least, double greatest) implements Distribution {
  public EvenDistribution {
    if (!(least < greatest) || Double.isInfinite(greatest - least)) {
      throw new IllegalArgumentException(
          "an even spread goes from " + least + " to " + greatest + "; it must rise");
    }
  }

  @Override
  public double quantile(double chance) {
    return least + chance * (greatest - least);
  }
}
