package rillwright.cli.file.quantity;

/**
 * A quantity as it is known.
 *
 * @param middle what to reckon with, in the base unit of its measure (SI where there is one)
 * @param spread how far it may be off
 */
public record Quantity(double middle, Spread spread) {

  /** How far a quantity may be off. */
  public sealed interface Spread {}

  /** Taken as known exactly. */
  public record Exact() implements Spread {}

  /**
   * Normal about the middle, cut off at what is valid.
   *
   * @param halfWidth half the width of the 95 % interval, greater than 0
   */
  public record Normal(double halfWidth) implements Spread {}

  /**
   * Anything between two values alike.
   *
   * @param least the lower end
   * @param greatest the upper end, above it
   */
  public record Even(double least, double greatest) implements Spread {}

  /** A quantity that is known exactly. */
  public static Quantity exactly(double value) {
    return new Quantity(value, new Exact());
  }

  /** Whether it is taken as known exactly. */
  public boolean isExact() {
    return spread instanceof Exact;
  }
}
