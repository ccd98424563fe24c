package rillwright.cli.file.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;
import rillwright.solver.law.Gravity;

/** What a field measures, and in which units it may be written. */
public final class Measure {
  /** m. */
  public static final Measure LENGTH = of(Dimension.LENGTH);

  /** m³/s. */
  public static final Measure FLOW = of(Dimension.FLOW);

  /** m²/s: flow per width of a crest. */
  public static final Measure FLOW_PER_WIDTH = of(Dimension.FLOW_PER_WIDTH);

  /** Pa. */
  public static final Measure PRESSURE = of(Dimension.PRESSURE);

  /** m². */
  public static final Measure AREA = of(Dimension.AREA);

  /** m³. */
  public static final Measure VOLUME = of(Dimension.VOLUME);

  /** W. */
  public static final Measure POWER = of(Dimension.POWER);

  /** s. */
  public static final Measure TIME = of(Dimension.TIME);

  /** m/s. */
  public static final Measure SPEED = of(Dimension.SPEED);

  /** kg/m³. */
  public static final Measure DENSITY = of(Dimension.DENSITY);

  /** m²/s. */
  public static final Measure KINEMATIC_VISCOSITY = of(Dimension.KINEMATIC_VISCOSITY);

  /** Share of 1. */
  public static final Measure SHARE = of(Dimension.SHARE);

  /** °C. */
  public static final Measure TEMPERATURE =
      new Measure(
          "a temperature",
          List.of(
              new Scale("F", 5 / 9.0, -32),
              new Scale("C", 1),
              new Scale("°F", 5 / 9.0, -32),
              new Scale("°C", 1)),
          2);

  /** Hours in a day. */
  public static final Measure HOURS_PER_DAY =
      new Measure("hours in a day", List.of(new Scale("h/day", 1)), 1);

  /** Days in a year. */
  public static final Measure DAYS_PER_YEAR =
      new Measure(
          "days in a year", List.of(new Scale("days/year", 1), new Scale("day/year", 1)), 1);

  /** A number without a unit. */
  public static final Measure NUMBER = new Measure("a plain number", List.of(new Scale("", 1)), 0);

  /** How many pieces. */
  public static final Measure COUNT = new Measure("a whole number", List.of(new Scale("", 1)), 0);

  /** Degrees, with or without saying so. */
  public static final Measure ANGLE =
      new Measure(
          "an angle in degrees",
          List.of(new Scale("", 1), new Scale("deg", 1), new Scale("°", 1)),
          2);

  private final String words;
  private final List<Scale> scales;
  private final int offered;

  /**
   * A measure.
   *
   * @param words "a length"
   * @param scales its units; an empty symbol allows a bare number
   * @param offered how many of them, from the first, to offer in messages
   */
  private Measure(String words, List<Scale> scales, int offered) {
    this.words = words;
    this.scales = scales;
    this.offered = offered;
  }

  private static Measure of(Dimension dimension) {
    return new Measure(dimension.words(), scalesOf(dimension, 1), dimension.units().size());
  }

  /** The usual symbols first, then the other ways of writing them. */
  private static List<Scale> scalesOf(Dimension dimension, double perSi) {
    List<Scale> scales = new ArrayList<>();
    for (Unit unit : dimension.units()) {
      scales.add(new Scale(unit.symbol(), unit.toSi(1) / perSi));
    }
    for (Unit unit : dimension.units()) {
      for (String symbol : unit.symbols()) {
        if (!symbol.equals(unit.symbol())) {
          scales.add(new Scale(symbol, unit.toSi(1) / perSi));
        }
      }
    }
    return scales;
  }

  /**
   * A head, m: a length, or a pressure divided by density × g.
   *
   * @param densityKgPerM3 of the water, kg/m³
   */
  public static Measure headIn(double densityKgPerM3) {
    List<Scale> scales = new ArrayList<>();
    for (Unit unit : Dimension.LENGTH.units()) {
      scales.add(new Scale(unit.symbol(), unit.toSi(1)));
    }
    scales.addAll(scalesOf(Dimension.PRESSURE, densityKgPerM3 * Gravity.STANDARD_M_PER_S2));
    return new Measure("a head", scales, scales.size());
  }

  /** What may be measured by either of two. */
  public static Measure either(Measure one, Measure other) {
    List<Scale> scales = new ArrayList<>(one.scales.subList(0, one.offered));
    scales.addAll(other.scales.subList(0, other.offered));
    int offered = scales.size();
    scales.addAll(one.scales.subList(one.offered, one.scales.size()));
    scales.addAll(other.scales.subList(other.offered, other.scales.size()));
    return new Measure(one.words + " or " + other.words, scales, offered);
  }

  /** "a length": for messages. */
  public String words() {
    return words;
  }

  /** Whether a number needs a unit. */
  boolean needsUnit() {
    return find("").isEmpty();
  }

  /** Whether a smaller unit may be added: {@code 7 ft 3 in}. */
  boolean addsUp() {
    return find("ft").isPresent();
  }

  Optional<Scale> find(String symbol) {
    for (Scale scale : scales) {
      if (scale.symbol().equals(symbol)) {
        return Optional.of(scale);
      }
    }
    return Optional.empty();
  }

  /** The units to offer in messages, the usual one first. */
  List<String> symbols() {
    return scales.stream().limit(offered).map(Scale::symbol).filter(s -> !s.isEmpty()).toList();
  }

  /** What a symbol measures when it is not one of these: "a flow". */
  static Optional<String> wordsOf(String symbol) {
    return Unit.find(symbol)
        .map(unit -> unit.dimension().words())
        .or(
            () ->
                Arrays.stream(new Measure[] {TEMPERATURE, HOURS_PER_DAY, DAYS_PER_YEAR})
                    .filter(measure -> measure.find(symbol).isPresent())
                    .map(Measure::words)
                    .findFirst());
  }
}
