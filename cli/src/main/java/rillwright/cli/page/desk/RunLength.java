package rillwright.cli.page.desk;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The length of a run as it is written.
 *
 * @param number of its unit
 * @param unit as written
 */
record RunLength(BigDecimal number, String unit) {
  private static final Pattern WRITTEN = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?) *([a-zA-Z]+)");

  private static final BigDecimal HALF = new BigDecimal("0.5");

  /** The length in a text; empty unless it is one number and its unit. */
  static Optional<RunLength> find(String text) {
    Matcher written = WRITTEN.matcher(text.strip());
    return written.matches()
        ? Optional.of(new RunLength(new BigDecimal(written.group(1)), written.group(2)))
        : Optional.empty();
  }

  RunLength half() {
    return new RunLength(number.multiply(HALF), unit);
  }

  /** What is left beyond a part; empty unless that is in the same unit and ends within it. */
  Optional<RunLength> beyond(RunLength part) {
    boolean isWithin =
        unit.equals(part.unit) && part.number.signum() > 0 && part.number.compareTo(number) < 0;
    return isWithin
        ? Optional.of(new RunLength(number.subtract(part.number), unit))
        : Optional.empty();
  }

  /** As it is written. */
  String text() {
    return number.stripTrailingZeros().toPlainString() + " " + unit;
  }
}
