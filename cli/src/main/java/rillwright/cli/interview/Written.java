package rillwright.cli.interview;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import rillwright.cli.file.edit.Quoting;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.quantity.Range;
import rillwright.curves.unit.Unit;

/** Quantities as they stand in a project. */
final class Written {
  private Written() {}

  /** A length as somebody wrote it, m; empty if it is none. */
  static OptionalDouble lengthM(String text) {
    try {
      return OptionalDouble.of(QuantityReader.read(text, Measure.LENGTH, Range.ANY).middle());
    } catch (NotAQuantity wrong) {
      return OptionalDouble.empty();
    }
  }

  /** A length that follows from others: in inches, or whole millimetres and tenths. */
  static String length(double lengthM, boolean metric) {
    return metric
        ? number(Unit.MILLIMETRE.fromSi(lengthM), "0.1") + " mm"
        : number(Unit.INCH.fromSi(lengthM), "0.0001") + " in";
  }

  /** About a share of a length that somebody wrote: whole inches, or 50 mm. */
  static String share(String text, double share, boolean metric) {
    double part = share * lengthM(text).orElse(1);
    return metric
        ? number(Unit.MILLIMETRE.fromSi(part), "50") + " mm"
        : number(Unit.INCH.fromSi(part), "1") + " in";
  }

  /** A head: "9.5 ft", "2.9 m". */
  static String head(double headM, boolean metric) {
    return metric ? number(headM, "0.01") + " m" : number(Unit.FOOT.fromSi(headM), "0.1") + " ft";
  }

  /** A flow: "2400 gph", "9.1 m3/h". */
  static String flow(double flowM3PerS, boolean metric) {
    return metric
        ? number(Unit.CUBIC_METRE_PER_HOUR.fromSi(flowM3PerS), "0.01") + " m3/h"
        : number(Unit.GALLON_PER_HOUR.fromSi(flowM3PerS), "1") + " gph";
  }

  private static String number(double value, String step) {
    BigDecimal rounded =
        new BigDecimal(value).divide(new BigDecimal(step), 0, RoundingMode.HALF_UP);
    BigDecimal number = rounded.multiply(new BigDecimal(step));
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  /** A value or name in YAML: plain where that is safe, else in double quotes. */
  static String yaml(String text) {
    boolean plain =
        text.matches("-?[A-Za-z0-9][A-Za-z0-9 ./%+±²³-]*")
            && !text.endsWith(" ")
            && !text.matches("(?i)y|n|yes|no|on|off|true|false|null");
    return plain ? text : Quoting.json(text);
  }
}
