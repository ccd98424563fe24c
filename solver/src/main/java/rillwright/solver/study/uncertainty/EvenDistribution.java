package rillwright.solver.study.uncertainty;

/**
 * Anything between two values: half of the chances below a middle, half above it, on either side
 * alike.
 *
 * @param least the lower end
 * @param middle from the lower to the upper end
 * @param greatest the upper end
 */
public record EvenDistribution(double least, double middle, double greatest)
    implements Distribution {
  public EvenDistribution {
    if (!(least < greatest) || Double.isInfinite(greatest - least)) {
      throw new IllegalArgumentException(
          "an even spread goes from " + least + " to " + greatest + "; it must rise");
    }
    if (!(least <= middle && middle <= greatest)) {
      throw new IllegalArgumentException(middle + " is not between " + least + " and " + greatest);
    }
  }

  /** Anything between two values alike. */
  public EvenDistribution(double least, double greatest) {
    this(least, least + (greatest - least) / 2, greatest);
  }

  @Override
  public double quantile(double chance) {
    double side = 2 * chance - 1;
    return middle + side * (side < 0 ? middle - least : greatest - middle);
  }
}
