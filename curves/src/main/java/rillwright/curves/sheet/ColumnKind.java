package rillwright.curves.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;

/** The columns of a data sheet that count. */
enum ColumnKind {
  FLOW(
      "flow",
      "q|flow ?rate|discharge|capacity|delivery|gp[hm]|m3/h|l/(h|min|s)",
      Unit.GALLON_PER_HOUR,
      10,
      "10 m3/s",
      Dimension.FLOW,
      Dimension.FLOW),
  HEAD(
      "head",
      "h|tdh|total (dynamic )?head|delivery head",
      Unit.FOOT,
      1000,
      "1000 m",
      Dimension.LENGTH,
      Dimension.PRESSURE),
  POWER(
      "power",
      "p|p1|(input|electrical) power|power (input|drawn)|watts?",
      Unit.WATT,
      1e6,
      "1000 kW",
      Dimension.POWER,
      Dimension.POWER),
  NPSH_REQUIRED(
      "npshr",
      "npsh.?r|npsh required",
      Unit.FOOT,
      100,
      "100 m",
      Dimension.LENGTH,
      Dimension.LENGTH);

  private final String heading;
  private final String otherHeadings;
  private final Unit usualUnit;
  private final double greatest;
  private final String greatestInWords;
  private final Dimension dimension;
  private final Dimension otherDimension;

  ColumnKind(
      String heading,
      String otherHeadings,
      Unit usualUnit,
      double greatest,
      String greatestInWords,
      Dimension dimension,
      Dimension otherDimension) {
    this.heading = heading;
    this.otherHeadings = otherHeadings;
    this.usualUnit = usualUnit;
    this.greatest = greatest;
    this.greatestInWords = greatestInWords;
    this.dimension = dimension;
    this.otherDimension = otherDimension;
  }

  /** The kind of a heading, by its own name or another usual one; P in a pressure is no power. */
  static Optional<ColumnKind> of(Heading heading) {
    String name = heading.name().toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(
            kind ->
                kind.heading.equals(name)
                    || (name.matches(kind.otherHeadings)
                        && heading.unit().filter(unit -> !kind.isMeasuredIn(unit)).isEmpty()))
        .findFirst();
  }

  /** Its heading without the unit. */
  String heading() {
    return heading;
  }

  /** A heading as it should be. */
  String example() {
    return heading + " [" + usualUnit.symbol() + "]";
  }

  Unit usualUnit() {
    return usualUnit;
  }

  boolean isNeeded() {
    return this == FLOW || this == HEAD;
  }

  boolean isMeasuredIn(Unit unit) {
    return unit.dimension() == dimension || unit.dimension() == otherDimension;
  }

  /** Symbols of the units that would do. */
  List<String> symbols() {
    return Stream.of(dimension, otherDimension)
        .distinct()
        .flatMap(measured -> measured.units().stream())
        .map(Unit::symbol)
        .toList();
  }

  /** The largest value that is believed, SI. */
  double greatest() {
    return greatest;
  }

  String greatestInWords() {
    return greatestInWords;
  }
}
