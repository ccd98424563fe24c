package rillwright.cli.file.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.MapNode;
import rillwright.curves.sheet.fact.Price;
import rillwright.solver.water.Water;
import rillwright.solver.water.WaterProperties;

/** Reads the sections {@code water}, {@code site}, {@code running} and {@code prices}. */
public final class SiteReader {
  private static final double ROUNDING_C = 1e-9;
  private static final Range TEMPERATURE =
      Range.between(
          Water.LEAST_TEMPERATURE_C - ROUNDING_C,
          Water.GREATEST_TEMPERATURE_C + ROUNDING_C,
          "must be 32 F to 104 F (0 C to 40 C)");
  private static final Range DENSITY = Range.between(500, 2000, "must be 500 kg/m3 to 2000 kg/m3");
  private static final Range VISCOSITY = Range.between(1e-8, 1, "must be 1e-8 m2/s to 1 m2/s");
  private static final Range ELEVATION = Range.between(-500, 9000, "must be -500 m to 9000 m");
  private static final Range HOURS = Range.between(0, 24, "must be 0 to 24 h/day");
  private static final Range DAYS = Range.between(0, 366, "must be 0 to 366 days/year");
  private static final List<String> LENGTHS = List.of("ft", "in", "m", "cm", "mm");

  private final Fields root;

  /** A reader of a project's first level. */
  public SiteReader(Fields root) {
    this.root = root;
  }

  /** The water: by temperature, or by density and viscosity, or at 20 °C. */
  public Water water() {
    Optional<Fields> fields =
        root.findFields(
            "water", List.of("temperature", "density", "viscosity"), "{temperature: 62 F}");
    if (fields.isEmpty()) {
      return Water.at(Water.USUAL_TEMPERATURE_C);
    }
    Fields water = fields.get();
    boolean explicit = water.has("density") || water.has("viscosity");
    if (water.has("temperature") && explicit) {
      water.fault("give either a temperature or density and viscosity, not both");
    } else if (explicit) {
      double density = water.require("density", Measure.DENSITY, DENSITY, "998.2 kg/m3");
      double viscosity =
          water.require("viscosity", Measure.KINEMATIC_VISCOSITY, VISCOSITY, "1.004e-6 m2/s");
      return new Water(
          density, viscosity, WaterProperties.vapourPressurePa(Water.USUAL_TEMPERATURE_C));
    }
    double temperature =
        water.findOr("temperature", Measure.TEMPERATURE, TEMPERATURE, Water.USUAL_TEMPERATURE_C);
    return Water.at(
        Math.max(Water.LEAST_TEMPERATURE_C, Math.min(Water.GREATEST_TEMPERATURE_C, temperature)));
  }

  /** Height of the site above sea level, m; 0 unless the file says otherwise. */
  public double elevationM() {
    return root.findFields("site", List.of("elevation"), "{elevation: 420 ft}")
        .map(site -> site.findOr("elevation", Measure.LENGTH, ELEVATION, 0))
        .orElse(0.0);
  }

  /** How long the pumps run and what that costs. */
  public Running running() {
    return root.findFields("running", List.of("price", "hours", "days"), "{price: 0.17 USD/kWh}")
        .map(
            running ->
                new Running(
                    running.findPrice("price", List.of("kWh")),
                    running.find("hours", Measure.HOURS_PER_DAY, HOURS),
                    running.find("days", Measure.DAYS_PER_YEAR, DAYS)))
        .orElse(new Running(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
  }

  /**
   * What the crew pays for pipe, fittings and trench.
   *
   * @param names that prices may have
   */
  public Prices prices(PriceNames names) {
    Optional<Fields> fields = root.findFields("prices", List.of("pipe", "fittings", "trench"));
    fields.ifPresent(names::check);
    return fields
        .map(
            prices ->
                new Prices(
                    byName(prices, "pipe", LENGTHS),
                    byName(prices, "fittings", List.of()),
                    prices.findPrice("trench", LENGTHS)))
        .orElse(new Prices(Map.of(), Map.of(), Optional.empty()));
  }

  private static Map<String, Price> byName(Fields prices, String field, List<String> units) {
    Map<String, Price> found = new LinkedHashMap<>();
    List<String> names = prices.findMap(field).map(MapNode::keys).orElse(List.of());
    prices
        .findFields(field, names)
        .ifPresent(
            named ->
                names.forEach(
                    name ->
                        named.findPrice(name, units).ifPresent(price -> found.put(name, price))));
    return found;
  }
}
