package rillwright.cli.catalogue.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import rillwright.curves.unit.Unit;

/** Numbers for people: no more digits than the tables have. */
final class Digits {
  private static final MathContext THREE = new MathContext(3);

  private Digits() {}

  /** At most three significant figures, no trailing zeros: 0.9, 206, 0.0021. */
  static String three(double number) {
    return number == 0
        ? "0"
        : new BigDecimal(number).round(THREE).stripTrailingZeros().toPlainString();
  }

  /** With a fixed number of decimals. */
  static String fixed(double number, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", number);
  }

  /** {@code 0.75 to 1.5}, or one number where both ends are the same. */
  static String range(double least, double greatest) {
    String from = three(least);
    String to = three(greatest);
    return from.equals(to) ? from : from + " to " + to;
  }

  static double inches(double metres) {
    return Unit.INCH.fromSi(metres);
  }

  static double millimetres(double metres) {
    return Unit.MILLIMETRE.fromSi(metres);
  }
}
