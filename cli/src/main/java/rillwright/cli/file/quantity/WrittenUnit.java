package rillwright.cli.file.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A unit in which somebody wrote a quantity, to write others in it.
 *
 * @param symbol as written; empty for a plain number
 * @param factor base units in one of it
 * @param shift added to a number first; 0 but for temperatures
 */
public record WrittenUnit(String symbol, double factor, double shift) {
  private static final double HALF_WIDTHS = 1.96 / (2 * 1.645);
  private static final double WITHIN = 0.9;
  private static final int FIGURES = 2;

  /** The unit at the end of a text; the usual one of the measure where it has none of it. */
  public static WrittenUnit of(String text, Measure measure) {
    Scale scale = measure.endOf(text.strip());
    return new WrittenUnit(scale.symbol(), scale.factor(), scale.shift());
  }

  /**
   * A value with as many decimals as a difference needs: "38.2 ft".
   *
   * @param base in base units
   * @param difference that still matters, in base units
   */
  public String value(double base, double difference) {
    BigDecimal rounded = rounded(base / factor - shift, difference / factor);
    return rounded.toPlainString() + (symbol.isEmpty() ? "" : " " + symbol);
  }

  /** Normal about a middle, with 5 and 95 % at two ends: "38.2 ft ± 0.9 ft". */
  public String normal(double p5, double p50, double p95) {
    double halfWidth = HALF_WIDTHS * (p95 - p5);
    return value(p50, halfWidth) + " ± " + difference(halfWidth);
  }

  /** Anything alike between two ends of which 5 and 95 % are known: "0.1 mm .. 0.3 mm". */
  public String even(double p5, double p95, double least, double greatest) {
    double beyond = (p95 - p5) * (1 - WITHIN) / (2 * WITHIN);
    double from = Math.max(least, p5 - beyond);
    double to = Math.min(greatest, p95 + beyond);
    return value(from, to - from) + " .. " + value(to, to - from);
  }

  private String difference(double halfWidth) {
    BigDecimal rounded = rounded(halfWidth / factor, halfWidth / factor);
    return rounded.toPlainString() + (symbol.isEmpty() ? "" : " " + symbol);
  }

  private static BigDecimal rounded(double number, double difference) {
    if (!(difference > 0)) {
      return BigDecimal.valueOf(number);
    }
    int firstPlace = (int) Math.floor(Math.log10(difference));
    int decimals = Math.max(0, FIGURES - 1 - firstPlace);
    return new BigDecimal(number).setScale(decimals, RoundingMode.HALF_EVEN);
  }
}
