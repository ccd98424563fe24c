package rillwright.solver.invariant;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Refuses values that mean nothing, with a sentence that says what the value is and what it must
 * be: "loss coefficient is -0.4; it must be at least 0".
 *
 * <p>Each question takes the words for the value, the value, and its unit's symbol, which may be
 * empty; each throws {@link IllegalArgumentException}.
 */
public final class Require {
  private Require() {}

  /** The value itself, which must be there. */
  public static <T> T given(String what, T value) {
    if (value == null) {
      throw new IllegalArgumentException(what + " is null; it must be given");
    }
    return value;
  }

  /** A copy of a list, which must be there with all that is in it. */
  public static <T> List<T> all(String what, List<T> values) {
    for (T value : given(what, values)) {
      given("one of the " + what, value);
    }
    return List.copyOf(values);
  }

  /** A text with something to read in it. */
  public static void name(String what, String value) {
    if (given(what, value).isBlank()) {
      throw new IllegalArgumentException(what + " is \"" + value + "\"; it must not be blank");
    }
  }

  /** A finite number. */
  public static void finite(String what, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw refused(what, value, unit, "a finite number");
    }
  }

  /** A finite number, where there is one. */
  public static void finite(String what, OptionalDouble value, String unit) {
    given(what, value).ifPresent(number -> finite(what, number, unit));
  }

  /** A finite number above 0. */
  public static void positive(String what, double value, String unit) {
    above(what, value, 0, unit);
  }

  /** A finite number above 0, where there is one. */
  public static void positive(String what, OptionalDouble value, String unit) {
    given(what, value).ifPresent(number -> positive(what, number, unit));
  }

  /** A finite number above a bound. */
  public static void above(String what, double value, double bound, String unit) {
    finite(what, value, unit);
    if (!(value > bound)) {
      throw refused(what, value, unit, "greater than " + plain(bound));
    }
  }

  /** A finite number below a bound. */
  public static void below(String what, double value, double bound, String unit) {
    finite(what, value, unit);
    if (!(value < bound)) {
      throw refused(what, value, unit, "less than " + plain(bound));
    }
  }

  /** A finite number from a bound upwards. */
  public static void atLeast(String what, double value, double least, String unit) {
    finite(what, value, unit);
    if (!(value >= least)) {
      throw refused(what, value, unit, "at least " + plain(least));
    }
  }

  /** A finite number from a bound upwards, where there is one. */
  public static void atLeast(String what, OptionalDouble value, double least, String unit) {
    given(what, value).ifPresent(number -> atLeast(what, number, least, unit));
  }

  /** A number from one bound to another, both allowed. */
  public static void between(String what, double value, double least, double most, String unit) {
    finite(what, value, unit);
    if (!(value >= least && value <= most)) {
      throw refused(what, value, unit, "from " + plain(least) + " to " + plain(most));
    }
  }

  /** A count from a bound upwards. */
  public static void atLeast(String what, int value, int least) {
    if (!(value >= least)) {
      throw refused(what, value, "", "at least " + least);
    }
  }

  /** A least flow, m³/s: 0 where nothing comes back, else negative infinity. */
  public static void leastFlow(double leastFlow) {
    if (!(leastFlow == 0 || leastFlow == Double.NEGATIVE_INFINITY)) {
      throw refused("least flow", leastFlow, "m³/s", "0 or negative infinity");
    }
  }

  /** A level that does not lie below another. */
  public static void notBelow(String what, double levelM, String other, double otherM) {
    if (!(levelM >= otherM)) {
      throw refused(what, levelM, "m", "at or above the " + other + ", " + plain(otherM) + " m");
    }
  }

  private static IllegalArgumentException refused(
      String what, double value, String unit, String right) {
    String symbol = unit.isEmpty() ? "" : " " + unit;
    return new IllegalArgumentException(
        what + " is " + plain(value) + symbol + "; it must be " + right);
  }

  /** 2 and not 2.0; Java's own digits else. */
  private static String plain(double value) {
    String digits = Double.toString(value);
    return digits.endsWith(".0") ? digits.substring(0, digits.length() - 2) : digits;
  }
}
