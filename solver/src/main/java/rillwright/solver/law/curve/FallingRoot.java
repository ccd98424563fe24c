package rillwright.solver.law.curve;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a falling function is 0, by false position with the weight of a stale end halved.
 *
 * <p>Source: Dowell, M. and Jarratt, P. (1971), "A modified regula falsi method for computing the
 * root of an equation", BIT 11, 168–174 (from memory): the Illinois rule.
 */
public final class FallingRoot {
  private static final int MOST_STEPS = 200;

  private FallingRoot() {}

  /**
   * The root.
   *
   * @param function falls
   * @param from where it is 0 or more
   * @param to where it is 0 or less
   * @param tolerance width of the interval, or size of the function, that ends the search
   */
  public static double find(
      DoubleUnaryOperator function, double from, double to, double tolerance) {
    double low = from;
    double high = to;
    double atLow = function.applyAsDouble(low);
    double atHigh = function.applyAsDouble(high);
    if (atLow <= 0) {
      return low;
    }
    if (atHigh >= 0) {
      return high;
    }
    int side = 0;
    double middle = low;
    for (int step = 0; step < MOST_STEPS && high - low > tolerance; step++) {
      double share = step % 8 == 7 ? 0.5 : atLow / (atLow - atHigh);
      middle = low + share * (high - low);
      double at = function.applyAsDouble(middle);
      if (Math.abs(at) <= tolerance) {
        return middle;
      }
      if (at > 0) {
        low = middle;
        atLow = at;
        atHigh = side > 0 ? atHigh / 2 : atHigh;
        side = 1;
      } else {
        high = middle;
        atHigh = at;
        atLow = side < 0 ? atLow / 2 : atLow;
        side = -1;
      }
    }
    return middle;
  }
}
