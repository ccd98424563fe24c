package rillwright.curves.unit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Units with their exact SI value.
 *
 * <p>Source: NIST Special Publication 811 (2008), appendix B.8 (SciPy has the same values): foot
 * 0.3048 m, US gallon 231 in³, imperial gallon 4.54609 L, horsepower 550 ft·lbf/s, psi.
 */
@SuppressWarnings("ImmutableEnumChecker") // lists that cannot be changed
public enum Unit {
  FOOT(Dimension.LENGTH, 0.3048, "ft", "'", "feet", "foot"),
  INCH(Dimension.LENGTH, 0.0254, "in", "\"", "inches", "inch"),
  METRE(Dimension.LENGTH, 1, "m", "metres", "metre", "meters", "meter"),
  CENTIMETRE(Dimension.LENGTH, 0.01, "cm"),
  MILLIMETRE(Dimension.LENGTH, 0.001, "mm"),

  GALLON_PER_HOUR(Dimension.FLOW, Values.US_GALLON / 3600, "gph"),
  GALLON_PER_MINUTE(Dimension.FLOW, Values.US_GALLON / 60, "gpm"),
  IMPERIAL_GALLON_PER_HOUR(Dimension.FLOW, Values.IMPERIAL_GALLON / 3600, "imp gph"),
  IMPERIAL_GALLON_PER_MINUTE(Dimension.FLOW, Values.IMPERIAL_GALLON / 60, "imp gpm"),
  CUBIC_FOOT_PER_SECOND(Dimension.FLOW, 0.3048 * 0.3048 * 0.3048, "cfs"),
  LITRE_PER_HOUR(Dimension.FLOW, 1e-3 / 3600, "L/h", "l/h"),
  LITRE_PER_MINUTE(Dimension.FLOW, 1e-3 / 60, "L/min", "l/min"),
  LITRE_PER_SECOND(Dimension.FLOW, 1e-3, "L/s", "l/s"),
  CUBIC_METRE_PER_HOUR(Dimension.FLOW, 1 / 3600.0, "m3/h", "m³/h"),
  CUBIC_METRE_PER_SECOND(Dimension.FLOW, 1, "m3/s", "m³/s"),

  GALLON_PER_HOUR_PER_INCH(Dimension.FLOW_PER_WIDTH, Values.US_GALLON / 3600 / 0.0254, "gph/in"),
  GALLON_PER_HOUR_PER_FOOT(Dimension.FLOW_PER_WIDTH, Values.US_GALLON / 3600 / 0.3048, "gph/ft"),
  CUBIC_METRE_PER_HOUR_PER_METRE(Dimension.FLOW_PER_WIDTH, 1 / 3600.0, "m3/h/m", "m³/h/m"),

  PSI(Dimension.PRESSURE, 6894.757293168361, "psi"),
  KILOPASCAL(Dimension.PRESSURE, 1e3, "kPa"),
  BAR(Dimension.PRESSURE, 1e5, "bar"),

  SQUARE_FOOT(Dimension.AREA, 0.3048 * 0.3048, "ft2", "ft²"),
  SQUARE_METRE(Dimension.AREA, 1, "m2", "m²"),

  GALLON(Dimension.VOLUME, Values.US_GALLON, "gal", "gallons", "gallon"),
  IMPERIAL_GALLON(Dimension.VOLUME, Values.IMPERIAL_GALLON, "imp gal"),
  CUBIC_FOOT(Dimension.VOLUME, 0.3048 * 0.3048 * 0.3048, "ft3", "ft³"),
  LITRE(Dimension.VOLUME, 1e-3, "L", "l", "litres", "litre", "liters", "liter"),
  CUBIC_METRE(Dimension.VOLUME, 1, "m3", "m³"),

  WATT(Dimension.POWER, 1, "W"),
  KILOWATT(Dimension.POWER, 1e3, "kW"),
  HORSEPOWER(Dimension.POWER, 745.6998715822702, "hp"),

  SECOND(Dimension.TIME, 1, "s"),
  MINUTE(Dimension.TIME, 60, "min"),
  HOUR(Dimension.TIME, 3600, "h"),
  DAY(Dimension.TIME, 86400, "day", "days"),

  METRE_PER_SECOND(Dimension.SPEED, 1, "m/s"),
  FOOT_PER_SECOND(Dimension.SPEED, 0.3048, "ft/s"),
  MILE_PER_HOUR(Dimension.SPEED, 0.44704, "mph"),
  KILOMETRE_PER_HOUR(Dimension.SPEED, 1 / 3.6, "km/h"),
  MILLIMETRE_PER_DAY(Dimension.SPEED, 1e-3 / 86400, "mm/day"),
  INCH_PER_DAY(Dimension.SPEED, 0.0254 / 86400, "in/day"),

  KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, 1, "kg/m3", "kg/m³"),
  SQUARE_METRE_PER_SECOND(Dimension.KINEMATIC_VISCOSITY, 1, "m2/s", "m²/s"),
  SQUARE_MILLIMETRE_PER_SECOND(Dimension.KINEMATIC_VISCOSITY, 1e-6, "mm2/s", "mm²/s"),

  PERCENT(Dimension.SHARE, 0.01, "%");

  private static final class Values {
    static final double US_GALLON = 3.785411784e-3;
    static final double IMPERIAL_GALLON = 4.54609e-3;
  }

  private static final Map<String, Unit> BY_SYMBOL = bySymbol();

  private final Dimension dimension;
  private final double siValue;
  private final List<String> symbols;

  Unit(Dimension dimension, double siValue, String... symbols) {
    this.dimension = dimension;
    this.siValue = siValue;
    this.symbols = List.of(symbols);
  }

  private static Map<String, Unit> bySymbol() {
    Map<String, Unit> units = new HashMap<>();
    for (Unit unit : values()) {
      unit.symbols.forEach(symbol -> units.put(symbol, unit));
    }
    return units;
  }

  /** The unit of a symbol, as written. */
  public static Optional<Unit> find(String symbol) {
    return Optional.ofNullable(BY_SYMBOL.get(symbol));
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** How it is written. */
  public String symbol() {
    return symbols.get(0);
  }

  /** All ways in which it may be written. */
  public List<String> symbols() {
    return symbols;
  }

  /** A number of this unit in SI. */
  public double toSi(double number) {
    return number * siValue;
  }

  /** An SI value in this unit. */
  public double fromSi(double si) {
    return si / siValue;
  }
}
