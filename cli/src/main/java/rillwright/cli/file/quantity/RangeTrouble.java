package rillwright.cli.file.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.curves.wording.PlainText;

/** What to answer to a range or a tolerance that is written in another way. */
final class RangeTrouble {
  private static final Pattern SLASHED = Pattern.compile("\\+ ?/ ?[-\u2212]");
  private static final Pattern SHARE = Pattern.compile("(\\d*\\.?\\d+)\\s*%");
  private static final MathContext SHORT = new MathContext(3);

  private RangeTrouble() {}

  /** The answer to a text whose form says that it is wrong; empty to any other. */
  static Optional<String> ofForm(String text) {
    String quoted = PlainText.quoted(text);
    Matcher slashed = SLASHED.matcher(text);
    if (slashed.find()) {
      String right = slashed.replaceFirst("\u00b1");
      return Optional.of(quoted + ": write \u00b1 or +-: " + PlainText.quoted(right));
    }
    boolean tolerance = text.contains("\u00b1") || text.contains("+-");
    if (tolerance && text.contains("..")) {
      return Optional.of(quoted + ": say a range or a tolerance, not both");
    }
    return Optional.empty();
  }

  /** The answer to a tolerance that is not above 0. */
  static String notAbove0(String text) {
    return PlainText.quoted(text)
        + ": what stands after \"\u00b1\" must be greater than 0; it is half the width of the"
        + " interval, to both sides";
  }

  /** The answer to a range whose first value is not below its second. */
  static String notRising(String text, String least, boolean isOneValue) {
    return PlainText.quoted(text)
        + (isOneValue
            ? " is one value; write " + PlainText.quoted(least)
            : " is a range from high to low; write the smaller value first");
  }

  /**
   * The answer to a tolerance that is a share of its middle; empty if it is none.
   *
   * @param middle as written
   * @param width as written
   */
  static Optional<String> share(String text, String middle, String width, Measure measure) {
    Matcher share = SHARE.matcher(width);
    if (!share.matches() || measure.find("%").isPresent()) {
      return Optional.empty();
    }
    NumberScanner scanner = new NumberScanner(middle);
    scanner.sign();
    OptionalDouble number = scanner.number();
    String symbol = scanner.rest();
    Optional<Scale> scale = measure.find(symbol).filter(unit -> unit.shift() == 0);
    String quoted = PlainText.quoted(text);
    if (scale.isEmpty() || !(number.orElse(0) > 0) || !Double.isFinite(number.getAsDouble())) {
      return Optional.of(quoted + ": a tolerance is written in a unit, not as a share");
    }
    double half = number.getAsDouble() * Double.parseDouble(share.group(1)) / 100;
    String shown = new BigDecimal(half, SHORT).stripTrailingZeros().toPlainString();
    return Optional.of(
        quoted + ": write " + PlainText.quoted("\u00b1 " + (shown + " " + symbol).strip()));
  }
}
