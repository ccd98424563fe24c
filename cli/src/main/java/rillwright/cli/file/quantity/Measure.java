package rillwright.cli.file.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;
import rillwright.solver.law.Gravity;

/** What a field measures, and in which units it may be written. */
public final class Measure {
  /** m. */
  public static final Measure LENGTH = of(Dimension.LENGTH);

  /** m, of things that are inches or millimetres rather than feet or metres. */
  public static final Measure SMALL_LENGTH = lengths(List.of("in", "mm", "cm", "ft", "m"), 2);

  /** m, of things that are fractions of a millimetre. */
  public static final Measure FINE_LENGTH = lengths(List.of("mm", "in", "cm", "ft", "m"), 1);

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
  public static final Measure NUMBER = plain("a plain number", "1.5", "");

  /** How many pieces. */
  public static final Measure COUNT = plain("a whole number", "2", "");

  /** Run over rise of a bank: horizontal to vertical. */
  public static final Measure BANK =
      plain(
          "a plain number",
          "1.5",
          "a bank is run over rise: 0 is a wall, 1 is 45 degrees, 1.5 goes 1.5 across for 1 up");

  /** Manning's n, s/m^⅓. */
  public static final Measure MANNING_N =
      plain("a plain number", "0.04", "Manning's n is a number such as 0.04");

  /** Degrees, with or without saying so. */
  public static final Measure ANGLE =
      new Measure(
          "an angle in degrees",
          List.of(new Scale("", 1), new Scale("deg", 1), new Scale("°", 1)),
          2,
          List.of("90"),
          "");

  /** Electrical voltage. */
  public static final Measure VOLTAGE = new Measure("a voltage", List.of(new Scale("V", 1)), 1);

  /** By how much a level falls in a time, m/s. */
  public static final Measure FALL_OF_LEVEL =
      new Measure(
          "a fall of the level",
          List.of(
              new Scale("mm/h", 1e-3 / 3600),
              new Scale("in/h", 0.0254 / 3600),
              new Scale("mm/day", 1e-3 / 86400),
              new Scale("in/day", 0.0254 / 86400)),
          2);

  private static final Set<String> METRIC =
      Set.of(
          "m", "cm", "mm", "m3/h", "L/h", "L/min", "L/s", "m3/s", "m3/h/m", "kPa", "bar", "m2",
          "m3", "L", "m/s", "km/h", "mm/day", "C");

  private final String words;
  private final List<Scale> scales;
  private final int offered;
  private final List<String> examples;
  private final String meaning;

  /**
   * A measure.
   *
   * @param words "a length"
   * @param scales its units; an empty symbol allows a bare number
   * @param offered how many of them, from the first, to offer in messages
   * @param examples units in which to show what could be written; of plain numbers, numbers
   * @param meaning of a plain number, where people write it in other ways; empty if clear
   */
  private Measure(
      String words, List<Scale> scales, int offered, List<String> examples, String meaning) {
    this.words = words;
    this.scales = scales;
    this.offered = offered;
    this.examples = examples;
    this.meaning = meaning;
  }

  private Measure(String words, List<Scale> scales, int offered) {
    this(words, scales, offered, List.of(scales.get(0).symbol()), "");
  }

  private static Measure plain(String words, String example, String meaning) {
    return new Measure(words, List.of(new Scale("", 1)), 0, List.of(example), meaning);
  }

  /**
   * Lengths in another order of their units.
   *
   * @param symbols all of them
   * @param shown how many of them to show as examples
   */
  private static Measure lengths(List<String> symbols, int shown) {
    Set<Scale> scales = new LinkedHashSet<>();
    symbols.forEach(symbol -> scales.add(LENGTH.find(symbol).orElseThrow()));
    scales.addAll(LENGTH.scales);
    return new Measure(
        LENGTH.words,
        List.copyOf(scales),
        symbols.size(),
        symbols.subList(0, shown),
        LENGTH.meaning);
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
    List<Scale> pressures =
        scalesOf(Dimension.PRESSURE, densityKgPerM3 * Gravity.STANDARD_M_PER_S2);
    Measure both = either(LENGTH, new Measure(PRESSURE.words, pressures, pressures.size()));
    return new Measure("a head", both.scales, both.offered);
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

  /** The same, with metric units offered before others. */
  public Measure metricFirst() {
    List<Scale> ordered = new ArrayList<>(scales.subList(0, offered));
    ordered.sort(Comparator.comparing(scale -> !METRIC.contains(scale.symbol())));
    ordered.addAll(scales.subList(offered, scales.size()));
    boolean anyMetric = offered > 0 && METRIC.contains(ordered.get(0).symbol());
    List<String> shown = anyMetric ? List.of(ordered.get(0).symbol()) : examples;
    return new Measure(words, ordered, offered, shown, meaning);
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

  /** The unit that a text ends with; the usual one where it ends with none of them. */
  Scale endOf(String text) {
    Scale found = scales.get(0);
    int longest = 0;
    for (Scale scale : scales) {
      int before = text.length() - scale.symbol().length() - 1;
      boolean ends = text.endsWith(scale.symbol()) && before >= 0;
      if (ends && scale.symbol().length() > longest && !Character.isLetter(text.charAt(before))) {
        found = scale;
        longest = scale.symbol().length();
      }
    }
    return found;
  }

  /** The units to offer in messages, the usual one first. */
  List<String> symbols() {
    return scales.stream().limit(offered).map(Scale::symbol).filter(s -> !s.isEmpty()).toList();
  }

  /** Units in which to show what could be written; of plain numbers, numbers. */
  List<String> examples() {
    return examples;
  }

  /** What a plain number means, where people write it in other ways; empty if that is clear. */
  String meaning() {
    return meaning;
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
