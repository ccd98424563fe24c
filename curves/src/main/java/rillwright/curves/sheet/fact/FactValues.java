package rillwright.curves.sheet.fact;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.curves.sheet.fault.FaultList;
import rillwright.curves.sheet.text.Cell;
import rillwright.curves.sheet.text.NumberReader;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;
import rillwright.curves.wording.Listing;
import rillwright.curves.wording.PlainText;

/** The facts that comments may give, and how their values are written. */
public final class FactValues {
  public static final String MAKER = "maker";
  public static final String PRICE = "price";
  public static final String KIND = "kind";
  public static final String MIN_SUBMERGENCE = "min submergence";
  public static final String NPSH_REQUIRED = "npsh required";
  public static final String SELF_PRIMING = "self priming";
  public static final String VARIABLE_SPEED = "variable speed";
  public static final String SOLIDS = "solids";
  public static final String RATED_POWER = "rated power";
  public static final String VOLTAGE = "voltage";

  /** The same as {@link #VOLTAGE}. */
  public static final String RATED = "rated";

  public static final String POWER_FACTOR = "power factor";
  public static final String PHASES = "phases";
  public static final List<String> KEYS =
      List.of(
          MAKER,
          PRICE,
          KIND,
          MIN_SUBMERGENCE,
          NPSH_REQUIRED,
          SELF_PRIMING,
          VARIABLE_SPEED,
          SOLIDS,
          RATED_POWER,
          VOLTAGE,
          RATED,
          POWER_FACTOR,
          PHASES);

  private static final Pattern QUANTITY = Pattern.compile("(.*[\\d.,])\\s*(\\p{L}.*)");
  private static final Pattern FRACTION = Pattern.compile("(?:(\\d+)[\\s-]+)?(\\d+)/(\\d+)");
  private static final Pattern SPEEDS =
      Pattern.compile("([^%\\s]+)\\s*%?\\s*\\.\\.\\s*([^%\\s]+)\\s*%");

  private final NumberReader numbers;
  private final FaultList faults;

  public FactValues(NumberReader numbers, FaultList faults) {
    this.numbers = numbers;
    this.faults = faults;
  }

  /** "389 USD". */
  public Optional<Price> price(Cell cell) {
    Matcher parts = QUANTITY.matcher(cell.text());
    if (parts.matches() && Price.isCurrency(parts.group(2))) {
      OptionalDouble amount = numbers.parse(parts.group(1));
      if (amount.isPresent() && amount.getAsDouble() >= 0) {
        return Optional.of(new Price(amount.getAsDouble(), parts.group(2)));
      }
    }
    return refuse(
        cell, "a price", "write the amount and the three letters of its currency, such as 389 USD");
  }

  /** "8 in", "1/2 in". */
  public Optional<Double> lengthM(String key, Cell cell) {
    Matcher parts = QUANTITY.matcher(cell.text());
    if (parts.matches()) {
      OptionalDouble number = number(parts.group(1));
      Optional<Unit> unit =
          Unit.find(parts.group(2)).filter(it -> it.dimension() == Dimension.LENGTH);
      if (number.isPresent() && number.getAsDouble() >= 0 && unit.isPresent()) {
        return Optional.of(unit.get().toSi(number.getAsDouble()));
      }
    }
    List<String> symbols = Dimension.LENGTH.units().stream().map(Unit::symbol).toList();
    return refuse(
        cell, "a length for \"" + key + "\"", "write a number and " + Listing.either(symbols));
  }

  /** "40..100 %". */
  public Optional<SpeedRange> speedRange(Cell cell) {
    Matcher parts = SPEEDS.matcher(cell.text());
    if (parts.matches()) {
      OptionalDouble least = numbers.parse(parts.group(1));
      OptionalDouble greatest = numbers.parse(parts.group(2));
      if (least.isPresent() && greatest.isPresent()) {
        double from = Unit.PERCENT.toSi(least.getAsDouble());
        double to = Unit.PERCENT.toSi(greatest.getAsDouble());
        if (SpeedRange.isRange(from, to)) {
          return Optional.of(new SpeedRange(from, to));
        }
      }
    }
    return refuse(
        cell,
        "a range of speeds",
        "write the least and the greatest, above 0 and up to 200 %, such as 40..100 %");
  }

  /** "420 W", "1/2 hp". */
  public Optional<Double> powerW(Cell cell) {
    Matcher parts = QUANTITY.matcher(cell.text());
    if (parts.matches()) {
      OptionalDouble number = number(parts.group(1));
      Optional<Unit> unit =
          Unit.find(parts.group(2)).filter(it -> it.dimension() == Dimension.POWER);
      if (number.isPresent() && number.getAsDouble() > 0 && unit.isPresent()) {
        return Optional.of(unit.get().toSi(number.getAsDouble()));
      }
    }
    return refuse(cell, "an electrical power", "write one above 0 such as 420 W");
  }

  /** "115 V". */
  public Optional<Double> volts(Cell cell) {
    Matcher parts = QUANTITY.matcher(cell.text());
    OptionalDouble number =
        parts.matches() && parts.group(2).equals("V")
            ? numbers.parse(parts.group(1))
            : OptionalDouble.empty();
    return number.orElse(0) > 0 && number.orElse(0) <= Nameplate.GREATEST_VOLTAGE_V
        ? Optional.of(number.getAsDouble())
        : refuse(cell, "a voltage", "write one up to 1000 V, such as 115 V");
  }

  /** "0.85". */
  public Optional<Double> powerFactor(Cell cell) {
    OptionalDouble number = numbers.parse(cell.text());
    return number.orElse(0) > 0 && number.orElse(0) <= 1
        ? Optional.of(number.getAsDouble())
        : refuse(cell, "a power factor", "write a number above 0 and up to 1, such as 0.85");
  }

  /** "1" or "3". */
  public Optional<Integer> phases(Cell cell) {
    return cell.text().equals("1") || cell.text().equals("3")
        ? Optional.of(Integer.valueOf(cell.text()))
        : refuse(cell, "a number of phases", "write 1 or 3");
  }

  private OptionalDouble number(String text) {
    Matcher fraction = FRACTION.matcher(text.strip());
    if (!fraction.matches()) {
      return numbers.parse(text.strip());
    }
    double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
    double value =
        whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private <T> Optional<T> refuse(Cell cell, String wanted, String remedy) {
    faults.add(
        cell.line(),
        cell.column(),
        "%s is not %s; %s, or leave the line out"
            .formatted(PlainText.quoted(cell.text()), wanted, remedy));
    return Optional.empty();
  }
}
