package rillwright.cli.report.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers with no more figures than mean something.
 *
 * <p>A number is rounded to a step of 1 or 5 in some decimal place: the widest that moves it by no
 * more than a share of itself. At 2.5 %, what 1,577 gph is known to at best, that is 1,600; 3,648
 * is 3,600; 123 is 125.
 */
final class Figures {
  private static final MathContext SURPLUS = new MathContext(15);
  private static final BigDecimal FIVE = new BigDecimal(5);
  private static final BigDecimal TWO = new BigDecimal(2);

  private Figures() {}

  /**
   * The number rounded, with thousands separators and without trailing zeros.
   *
   * @param number finite
   * @param share by which rounding may move it at most, greater than 0
   * @param leastStep the finest step, whatever the share allows; greater than 0
   */
  static String of(double number, double share, String leastStep) {
    if (number == 0) {
      return "0";
    }
    BigDecimal exact = new BigDecimal(number).round(SURPLUS);
    BigDecimal widest = exact.abs().multiply(BigDecimal.valueOf(share)).multiply(TWO);
    return grouped(rounded(exact, step(widest).max(new BigDecimal(leastStep))));
  }

  /** The number rounded to a fixed step. */
  static String ofStep(double number, String step) {
    return grouped(rounded(new BigDecimal(number).round(SURPLUS), new BigDecimal(step)));
  }

  /** The greatest of …, 0.1, 0.5, 1, 5, 10, … that is not above a limit. */
  private static BigDecimal step(BigDecimal limit) {
    BigDecimal one = BigDecimal.ONE.scaleByPowerOfTen(limit.precision() - limit.scale() - 1);
    BigDecimal five = one.multiply(FIVE);
    return five.compareTo(limit) <= 0 ? five : one;
  }

  private static BigDecimal rounded(BigDecimal exact, BigDecimal step) {
    return exact.divide(step, 0, RoundingMode.HALF_UP).multiply(step);
  }

  private static String grouped(BigDecimal number) {
    if (number.signum() == 0) {
      return "0";
    }
    StringBuilder text = new StringBuilder(number.abs().stripTrailingZeros().toPlainString());
    int point = text.indexOf(".");
    int whole = point < 0 ? text.length() : point;
    for (int i = whole - 3; i > 0; i -= 3) {
      text.insert(i, ',');
    }
    return number.signum() < 0 ? text.insert(0, '-').toString() : text.toString();
  }
}
