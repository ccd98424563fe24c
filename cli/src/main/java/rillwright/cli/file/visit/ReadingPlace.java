package rillwright.cli.file.visit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.outline.ReadingForm;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Tee;
import rillwright.solver.study.diagnosis.reading.LineFlow;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Span;
import rillwright.solver.study.diagnosis.reading.When;

/** Finds the thing in a network that a reading is of, and tells what does not fit. */
final class ReadingPlace {
  /** How far a pond may stand above its level where its brim is not known, m; common practice. */
  private static final double ABOVE_A_POND_M = 0.05;

  private final Network network;

  ReadingPlace(Network network) {
    this.network = network;
  }

  /** Flow at a fall or outlet, or in a line. */
  Optional<Measurand> flow(Fields fields, When when) {
    if (fields.has("line") && fields.has("flow")) {
      List<String> names = network.lines().stream().map(line -> line.name().value()).toList();
      return named(fields, "line", "line", names, Optional.empty(), LineName::new)
          .map(line -> new LineFlow(line, when));
    }
    if (fields.findWord("where", ReadingForm.WHERE).filter("box"::equals).isPresent()) {
      return point(fields, "a flow at a box", "a fall", Fall.class::isInstance)
          .map(fall -> new Meter(Meter.Kind.BOX, fall.name().value(), when));
    }
    return point(fields, "a flow", "a fall or an outlet", ReadingPlace::letsWaterOut)
        .map(point -> new Measurands.Flow(point.name(), when));
  }

  private static boolean letsWaterOut(Point point) {
    return point instanceof Fall || point instanceof Outlet;
  }

  /** Voltage at a line's running pump. */
  Optional<Measurand> volts(Fields fields, When when) {
    return line(fields, "pump", "a running pump", part -> part instanceof Pump)
        .map(line -> new Meter(Meter.Kind.VOLTS, line.value(), when));
  }

  /** By how much a pond falls. */
  Optional<Measurand> falls(Fields fields, When when) {
    return point(fields, "a fall of the level", "a basin", Basin.class::isInstance)
        .map(point -> new Meter(Meter.Kind.FALLS, point.name().value(), when));
  }

  /** Head over a crest. */
  Optional<Measurand> crestHead(Fields fields, When when) {
    return point(fields, "a crest head", "a fall", Fall.class::isInstance)
        .map(point -> new Measurands.CrestHead(point.name(), when));
  }

  /** Depth at a brink. */
  Optional<Measurand> brink(Fields fields, When when) {
    return point(fields, "a depth at the brink", "a fall with a crest", ReadingPlace::hasBrink)
        .map(point -> new Measurands.Brink(point.name(), when));
  }

  private static boolean hasBrink(Point point) {
    return point instanceof Fall fall && fall.weir().brinkDepthAt(1e-3).isPresent();
  }

  /** Level of open water. */
  Optional<Measurand> level(Fields fields, When when) {
    return point(fields, "a level", "a chamber or a basin", ReadingPlace::isOpenWater)
        .map(point -> new Measurands.Level(point.name(), when));
  }

  private static boolean isOpenWater(Point point) {
    return point instanceof Chamber || point instanceof Basin;
  }

  /**
   * Where a level can be: of a basin up to its brim, else {@link #ABOVE_A_POND_M} above its level;
   * of a chamber that stands in the ground beside basins up to the highest of theirs.
   */
  Span levels(PointName name) {
    Point point = network.point(name);
    double brim =
        (point instanceof Basin basin ? List.of(basin) : network.points(Basin.class))
            .stream().mapToDouble(ReadingPlace::brimM).max().orElse(Double.POSITIVE_INFINITY);
    double floor = point instanceof Chamber chamber ? chamber.floorM() : Double.NEGATIVE_INFINITY;
    return new Span(floor, floor < brim ? brim : Double.POSITIVE_INFINITY);
  }

  private static double brimM(Basin basin) {
    return basin.overflowM().orElse(basin.gradeM().orElse(basin.levelM() + ABOVE_A_POND_M));
  }

  /** Flow out of a chamber of known area. */
  Optional<Chamber> chamber(Fields fields) {
    Optional<Chamber> chamber =
        point(fields, "a drop of the level", "a chamber", Chamber.class::isInstance)
            .map(Chamber.class::cast);
    chamber
        .filter(it -> it.areaM2().isEmpty())
        .ifPresent(
            it ->
                fields.fault(
                    "at",
                    "a drop of the level needs the area of "
                        + PlainText.quoted(it.name().value())
                        + "; write for example \"area: 3 ft2\" at that chamber"));
    return chamber.filter(it -> it.areaM2().isPresent());
  }

  /** The chamber or basin whose level is given by how far it is below the pond. */
  Optional<Point> below(Fields fields) {
    return point(fields, "a level", "a chamber or a basin", ReadingPlace::isOpenWater);
  }

  /** The pond of a chamber: the only basin, else the only one that a line joins with it. */
  Optional<Basin> pondOf(Chamber chamber, Fields fields) {
    List<Basin> all = network.points(Basin.class);
    List<Basin> joined =
        all.stream().filter(basin -> all.size() == 1 || isJoined(basin, chamber)).toList();
    if (joined.size() != 1) {
      fields.fault(
          "below pond",
          "which pond is not clear; write its level in the file's datum, for example \"level: -5"
              + " in\"");
      return Optional.empty();
    }
    return Optional.of(joined.get(0));
  }

  private boolean isJoined(Basin basin, Chamber chamber) {
    Set<PointName> both = Set.of(basin.name(), chamber.name());
    return network.lines().stream().anyMatch(line -> both.equals(Set.of(line.from(), line.to())));
  }

  /** Pressure at a gauge or in a tee. */
  Optional<Measurand> pressure(Fields fields, When when) {
    if (fields.has("gauge")) {
      return named(
              fields,
              "gauge",
              "gauge",
              gauges(),
              gauges().stream().findFirst(),
              Function.identity())
          .map(gauge -> new Measurands.GaugePressure(gauge, when));
    }
    return point(fields, "a pressure", "a tee with an elevation", ReadingPlace::hasElevation)
        .map(point -> new Measurands.TeePressure(point.name(), when));
  }

  private static boolean hasElevation(Point point) {
    return point instanceof Tee tee && tee.elevationM().isPresent();
  }

  private List<String> gauges() {
    return network.lines().stream()
        .flatMap(line -> line.parts().stream())
        .filter(Gauge.class::isInstance)
        .map(part -> ((Gauge) part).name())
        .toList();
  }

  /** Power of a line's pump. */
  Optional<Measurand> power(Fields fields, When when) {
    return line(fields, "pump", "a running pump", part -> part instanceof Pump)
        .map(line -> new Measurands.Power(line, when));
  }

  /** The line whose valve is shut. */
  Optional<LineName> valve(Fields fields) {
    return line(fields, "valve", "a valve", part -> part.kind().equals("valve"));
  }

  /** The line whose valve is set; a fault where its loss by opening is not known. */
  Optional<LineName> valveThatTurns(Fields fields) {
    Optional<LineName> found = valve(fields);
    boolean turns =
        found.map(network::line).filter(line -> !When.ValveAt.isPossible(line)).isEmpty();
    if (!turns) {
      fields.fault(
          "valve",
          "the last valve of this line has no type, so what it takes when set otherwise is not"
              + " known; write for example valve: {type: ball, open: 100 %}");
    }
    return found.filter(line -> turns);
  }

  private Optional<LineName> line(
      Fields fields, String field, String needed, Predicate<Part> kind) {
    List<String> those =
        network.lines().stream()
            .filter(line -> line.parts().stream().anyMatch(kind))
            .map(line -> line.name().value())
            .toList();
    if (!fields.has(field) && those.isEmpty()) {
      fields.fault("it names no " + field + ", and no line of this job has one");
      return Optional.empty();
    }
    List<String> names = network.lines().stream().map(line -> line.name().value()).toList();
    Optional<LineName> name =
        named(fields, field, "line", names, those.stream().findFirst(), LineName::new);
    Optional<Line> without =
        name.map(network::line).filter(line -> line.parts().stream().noneMatch(kind));
    if (without.isPresent()) {
      fields.fault(
          field,
          "line "
              + PlainText.quoted(without.get().name().value())
              + " has no "
              + needed.substring(2)
              + (those.isEmpty()
                  ? "; no line has one"
                  : "; one with it: " + Choices.listed(those)));
      return Optional.empty();
    }
    return name;
  }

  static <T> Optional<T> named(
      Fields fields,
      String field,
      String what,
      List<String> names,
      Optional<String> example,
      Function<String, T> made) {
    Optional<String> name = fields.requireText(field, example.orElse("G1"));
    if (name.isPresent() && !names.contains(name.get())) {
      fields.unknown(
          field, "there is no " + what + " " + PlainText.quoted(name.get()), name.get(), names);
      return Optional.empty();
    }
    return name.map(made);
  }

  private Optional<Point> point(Fields fields, String what, String needed, Predicate<Point> kind) {
    List<String> names = network.points().stream().map(point -> point.name().value()).toList();
    Optional<PointName> name =
        named(fields, "at", "point", names, names.stream().findFirst(), PointName::new);
    Optional<Point> point = name.map(network::point);
    if (point.isPresent() && !kind.test(point.get())) {
      List<String> those =
          network.points().stream().filter(kind).map(p -> p.name().value()).toList();
      fields.fault(
          "at",
          what
              + " is read at "
              + needed
              + ", and "
              + PlainText.quoted(point.get().name().value())
              + " is not one"
              + (those.isEmpty() ? "; there is none" : "; it could be " + Choices.listed(those)));
      return Optional.empty();
    }
    return point;
  }
}
