package rillwright.solver.building;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.law.weir.Weir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Tee;
import rillwright.solver.water.Water;

/**
 * A network put together by hand: points first, then the lines that join them.
 *
 * <p>All is SI and in one datum. What is not said is as in a file that does not say it: water of 20
 * °C, a site at sea level, ends of lines that cost what ends in such water do. Every value is
 * checked by the record that it ends in; a wrong one is refused with {@link
 * IllegalArgumentException} and a sentence that says what it must be.
 */
public final class NetworkBuilder {
  /** By what share a depth over natural rock may be off; common practice, no source. */
  private static final double WIDE_BAND = 0.30;

  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  private final Map<PointName, Point> points = new LinkedHashMap<>();
  private final List<Line> lines = new ArrayList<>();
  private Water water = Water.at(Water.USUAL_TEMPERATURE_C);
  private double siteElevationM;

  /** The water in it. */
  public NetworkBuilder water(Water other) {
    water = other;
    return this;
  }

  /** Height of the site above sea level, m. */
  public NetworkBuilder siteElevation(double elevationM) {
    siteElevationM = elevationM;
    return this;
  }

  /** Any point. */
  public NetworkBuilder point(Point point) {
    if (points.put(point.name(), point) != null) {
      throw new IllegalArgumentException("two points are called \"" + point.name() + "\"");
    }
    return this;
  }

  /** Open water held at a level, m. */
  public NetworkBuilder basin(String name, double levelM) {
    return point(
        new Basin(new PointName(name), levelM, Optional.empty(), UNKNOWN, UNKNOWN, UNKNOWN));
  }

  /** A small open tank whose level is found: its floor and the pump's intake, m. */
  public NetworkBuilder chamber(String name, double floorM, double intakeM) {
    return point(new Chamber(new PointName(name), floorM, intakeM, UNKNOWN, UNKNOWN));
  }

  /** Where pipes meet, at an elevation, m. */
  public NetworkBuilder tee(String name, double elevationM) {
    return tee(name, elevationM, 0);
  }

  /** Where pipes meet, at an elevation, m, and a fixed flow is taken out, m³/s. */
  public NetworkBuilder tee(String name, double elevationM, double drawM3PerS) {
    return point(new Tee(new PointName(name), OptionalDouble.of(elevationM), drawM3PerS));
  }

  /** A spillway without a target, its crest at a level, m; depths over it are good to 30 %. */
  public NetworkBuilder fall(String name, double crestM, Weir weir) {
    return point(new Fall(new PointName(name), crestM, weir, WIDE_BAND, UNKNOWN, Optional.empty()));
  }

  /** The same with a target, m³/s. */
  public NetworkBuilder fall(String name, double crestM, Weir weir, double targetM3PerS) {
    OptionalDouble target = OptionalDouble.of(targetM3PerS);
    return point(new Fall(new PointName(name), crestM, weir, WIDE_BAND, target, Optional.empty()));
  }

  /** A pipe's open end in air, at an elevation, m. */
  public NetworkBuilder outlet(String name, double elevationM) {
    return point(new Outlet(new PointName(name), elevationM, UNKNOWN, Optional.empty(), UNKNOWN));
  }

  /**
   * A line whose ends cost what a pipe's end in these points' water does; nothing where its first
   * part takes the water in itself.
   *
   * @param from name of a point that is there already
   * @param to the same
   */
  public NetworkBuilder line(String name, String from, String to, LineParts parts) {
    EndLoss entrance = parts.takeWaterIn() ? EndLoss.NONE : point(from).usualEndLoss();
    return line(name, from, to, entrance, point(to).usualEndLoss(), parts);
  }

  /** A line whose ends cost a given K on the velocity head of its bore. */
  public NetworkBuilder line(
      String name, String from, String to, EndLoss entrance, EndLoss exit, LineParts parts) {
    Optional<Bore> bore = parts.bore();
    lines.add(
        new Line(
            new LineName(name),
            new PointName(from),
            new PointName(to),
            bore,
            parts.parts(),
            new LineEnd(entrance, bore),
            new LineEnd(exit, bore)));
    return this;
  }

  private Point point(String name) {
    Point point = points.get(new PointName(name));
    if (point == null) {
      throw new IllegalArgumentException(
          "there is no point \"" + name + "\"; points come before the lines that join them");
    }
    return point;
  }

  /**
   * The network.
   *
   * @throws IllegalArgumentException if its lines and points are no network
   */
  public Network build() {
    return new Network(water, siteElevationM, List.copyOf(points.values()), lines);
  }
}
