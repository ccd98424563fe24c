package rillwright.cli.file.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import rillwright.curves.unit.Unit;

/** Examples of what could be written, in the units of a metric file. */
public final class MetricExamples {
  private static final String BEGINNING = "for example ";

  /** Sizes by which the trade names pipes stay as they are. */
  private static final Pattern QUANTITY =
      Pattern.compile("(?<!size: )(?<![\\w.])(-?\\d+(?:\\.\\d+)?) (ft2|ft|in|gph/in|gph|psi|F)\\b");

  private static final MathContext DIGITS = new MathContext(2);

  private static final Map<String, Unit> METRIC =
      Map.of(
          "ft", Unit.METRE,
          "in", Unit.MILLIMETRE,
          "ft2", Unit.SQUARE_METRE,
          "gph", Unit.CUBIC_METRE_PER_HOUR,
          "gph/in", Unit.CUBIC_METRE_PER_HOUR_PER_METRE,
          "psi", Unit.KILOPASCAL);

  private MetricExamples() {}

  /** A message whose example, from "for example" on, is reported in metric units. */
  public static String in(String message) {
    int at = message.indexOf(BEGINNING);
    return at < 0
        ? message
        : message.substring(0, at)
            + QUANTITY.matcher(message.substring(at)).replaceAll(MetricExamples::metric);
  }

  private static String metric(MatchResult found) {
    double number = Double.parseDouble(found.group(1));
    String symbol = found.group(2);
    if (symbol.equals("F")) {
      return Math.round((number - 32) / 1.8) + " C";
    }
    Unit metric = METRIC.get(symbol);
    double other = metric.fromSi(Unit.find(symbol).orElseThrow().toSi(number));
    return new BigDecimal(other, DIGITS).stripTrailingZeros().toPlainString()
        + " "
        + metric.symbol();
  }
}
