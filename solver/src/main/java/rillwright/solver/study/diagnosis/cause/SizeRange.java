package rillwright.solver.study.diagnosis.cause;

/**
 * How large a cause can be, and that all sizes are alike in it.
 *
 * @param from least
 * @param to greatest, above it
 * @param log whether their logarithms are alike, not they themselves; then from is above 0
 */
public record SizeRange(double from, double to, boolean log) {
  public SizeRange {
    if (!(from < to) || (log && !(from > 0)) || Double.isInfinite(to - from)) {
      throw new IllegalArgumentException("sizes from " + from + " to " + to + " are no range");
    }
  }

  /** Alike by themselves. */
  public static SizeRange even(double from, double to) {
    return new SizeRange(from, to, false);
  }

  /** Alike by their logarithms. */
  public static SizeRange log(double from, double to) {
    return new SizeRange(from, to, true);
  }

  /** The size at a share of the range, 0 to 1. */
  public double at(double share) {
    return log ? from * Math.pow(to / from, share) : from + share * (to - from);
  }
}
