package rillwright.cli.file.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rillwright.curves.wording.Nearest;

/** Which unit somebody meant who wrote something like it. */
final class UnitSpelling {
  /** Usual ways of writing units that are not those of project files. */
  private static final Map<String, String> USUAL =
      Map.ofEntries(
          Map.entry("feet", "ft"),
          Map.entry("foot", "ft"),
          Map.entry("\u2032", "ft"),
          Map.entry("inch", "in"),
          Map.entry("inches", "in"),
          Map.entry("\u2033", "in"),
          Map.entry("''", "in"),
          Map.entry("metre", "m"),
          Map.entry("metres", "m"),
          Map.entry("meter", "m"),
          Map.entry("meters", "m"),
          Map.entry("gal/h", "gph"),
          Map.entry("gal/hr", "gph"),
          Map.entry("gal/hour", "gph"),
          Map.entry("gal/min", "gpm"),
          Map.entry("lph", "L/h"),
          Map.entry("l/hr", "L/h"),
          Map.entry("lpm", "L/min"),
          Map.entry("lps", "L/s"),
          Map.entry("m^3/h", "m3/h"),
          Map.entry("cmh", "m3/h"),
          Map.entry("m3/hr", "m3/h"),
          Map.entry("m^3/s", "m3/s"),
          Map.entry("gph/inch", "gph/in"),
          Map.entry("sqft", "ft2"),
          Map.entry("sq ft", "ft2"),
          Map.entry("ft^2", "ft2"),
          Map.entry("m^2", "m2"),
          Map.entry("sq m", "m2"),
          Map.entry("gallon", "gal"),
          Map.entry("gallons", "gal"),
          Map.entry("litre", "L"),
          Map.entry("litres", "L"),
          Map.entry("liter", "L"),
          Map.entry("liters", "L"),
          Map.entry("watt", "W"),
          Map.entry("watts", "W"),
          Map.entry("percent", "%"),
          Map.entry("pct", "%"),
          Map.entry("sec", "s"),
          Map.entry("seconds", "s"),
          Map.entry("hours/day", "h/day"),
          Map.entry("days", "days/year"),
          Map.entry("h", "h/day"),
          Map.entry("degc", "C"),
          Map.entry("degf", "F"));

  private UnitSpelling() {}

  /**
   * The unit that was most likely meant.
   *
   * @param written what is not a unit
   * @param symbols the units that would do
   */
  static Optional<String> meant(String written, List<String> symbols) {
    String lower = written.toLowerCase(Locale.ROOT);
    return usual(written, symbols).or(() -> nearest(written, lower, symbols));
  }

  /**
   * The unit for which what is written is a usual name.
   *
   * @param written what is not a unit
   * @param symbols the units that would do
   */
  static Optional<String> usual(String written, List<String> symbols) {
    return Optional.ofNullable(USUAL.get(written.toLowerCase(Locale.ROOT)))
        .filter(symbols::contains);
  }

  private static Optional<String> nearest(String written, String lower, List<String> symbols) {
    return Nearest.to(written, symbols).stream()
        .filter(near -> sharesALetter(lower, near.toLowerCase(Locale.ROOT)))
        .findFirst();
  }

  private static boolean sharesALetter(String one, String other) {
    return one.chars().anyMatch(letter -> Character.isLetter(letter) && other.indexOf(letter) >= 0);
  }
}
