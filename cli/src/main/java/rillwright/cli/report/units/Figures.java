package rillwright.cli.report.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Numbers with no more figures than mean something: rounded to so many figures, and never finer
 * than a step. To three figures 1,577 is 1,580 and 10.74 is 10.7.
 */
final class Figures {
  private static final double NEARLY = 1e-9;
  private static final MathContext SURPLUS = new MathContext(15);

  private Figures() {}

  /**
   * The number rounded, with thousands separators and without trailing zeros.
   *
   * @param number finite
   * @param figures how many of its figures are shown at most, 1 or more
   * @param leastStep the finest step, whatever the figures allow; greater than 0
   */
  static String of(double number, int figures, String leastStep) {
    if (number == 0) {
      return "0";
    }
    BigDecimal exact = new BigDecimal(number).round(SURPLUS);
    return grouped(rounded(exact, step(exact, figures, leastStep)));
  }

  private static BigDecimal step(BigDecimal exact, int figures, String leastStep) {
    int firstFigure = exact.precision() - exact.scale() - 1;
    BigDecimal lastFigure = BigDecimal.ONE.scaleByPowerOfTen(firstFigure - figures + 1);
    return lastFigure.max(new BigDecimal(leastStep));
  }

  /**
   * Parts of a sum, rounded so that they add up to it as {@link #of} tells it: all to its step,
   * what is left over to those with the largest remainders.
   */
  static List<String> parts(List<Double> parts, int figures, String leastStep) {
    BigDecimal sum =
        parts.stream().map(BigDecimal::new).reduce(BigDecimal.ZERO, BigDecimal::add).round(SURPLUS);
    BigDecimal step = step(sum, figures, leastStep);
    List<BigDecimal> whole = new ArrayList<>();
    parts.forEach(
        part -> whole.add(new BigDecimal(part).divide(step, 0, RoundingMode.FLOOR).multiply(step)));
    BigDecimal left =
        rounded(sum, step).subtract(whole.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
    IntStream.range(0, parts.size())
        .boxed()
        .sorted(
            Comparator.comparing(
                (Integer i) -> whole.get(i).subtract(new BigDecimal(parts.get(i)))))
        .limit(left.divide(step, 0, RoundingMode.HALF_UP).intValueExact())
        .forEach(i -> whole.set(i, whole.get(i).add(step)));
    return whole.stream().map(Figures::grouped).toList();
  }

  /** Whether so many figures say all of a number, but for what rounding loses. */
  static boolean isShort(double number, int figures) {
    double rounded = new BigDecimal(number).round(new MathContext(figures)).doubleValue();
    return Math.abs(rounded - number) <= NEARLY * Math.abs(number);
  }

  /** The number rounded to a fixed step. */
  static String ofStep(double number, String step) {
    return grouped(rounded(new BigDecimal(number).round(SURPLUS), new BigDecimal(step)));
  }

  /** The number with so many decimals, zeros too. */
  static String ofDecimals(double number, int decimals) {
    BigDecimal rounded =
        new BigDecimal(number).round(SURPLUS).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  private static BigDecimal rounded(BigDecimal exact, BigDecimal step) {
    return exact.divide(step, 0, RoundingMode.HALF_UP).multiply(step);
  }

  private static String grouped(BigDecimal number) {
    if (number.signum() == 0) {
      return "0";
    }
    String text = withSeparators(number.abs().stripTrailingZeros().toPlainString());
    return number.signum() < 0 ? "-" + text : text;
  }

  /** A number without a sign, its thousands set apart: "12,400.5". */
  static String withSeparators(String plain) {
    StringBuilder text = new StringBuilder(plain);
    int point = text.indexOf(".");
    int whole = point < 0 ? text.length() : point;
    for (int i = whole - 3; i > 0; i -= 3) {
      text.insert(i, ',');
    }
    return text.toString();
  }
}
