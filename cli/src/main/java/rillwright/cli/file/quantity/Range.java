package rillwright.cli.file.quantity;

/**
 * What values a field may have, in the base unit of its measure.
 *
 * @param least lower bound
 * @param leastIncluded whether it is allowed itself
 * @param greatest upper bound, allowed
 * @param words {@code must be greater than 0}
 */
public record Range(double least, boolean leastIncluded, double greatest, String words) {
  /** Beyond this size, in base units, nothing is believed. */
  public static final double LARGEST = 1e9;

  /** Nearer to 0 than this, in base units, nothing is believed. */
  public static final double SMALLEST = 1e-12;

  /** Any number. */
  public static final Range ANY = new Range(-LARGEST, true, LARGEST, "must be a number");

  /** Above 0. */
  public static final Range POSITIVE = new Range(0, false, LARGEST, "must be greater than 0");

  /** 0 or above. */
  public static final Range NOT_NEGATIVE = new Range(0, true, LARGEST, "must be 0 or more");

  /** A share of a whole. */
  public static final Range SHARE = new Range(0, true, 1, "must be 0 % to 100 %");

  /** From one value to another, both allowed. */
  public static Range between(double least, double greatest, String words) {
    return new Range(least, true, greatest, words);
  }

  /** Whether a value is in it. */
  public boolean holds(double value) {
    boolean fromBelow = leastIncluded ? value >= least : value > least;
    return fromBelow && value <= greatest;
  }

  /** The least value that is in it and believed. */
  public double leastBelievable() {
    return leastIncluded ? least : least + SMALLEST;
  }

  /** A value in it, to go on with after a fault was reported. */
  public double standIn() {
    if (holds(0)) {
      return 0;
    }
    return holds(1) ? 1 : greatest;
  }
}
