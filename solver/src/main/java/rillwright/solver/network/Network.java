package rillwright.solver.network;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.water.Water;

/**
 * Points joined by lines, and the water in them. Names are unique and lines join points of the
 * network.
 */
public final class Network {
  private final Water water;
  private final double siteElevationM;
  private final List<Point> pointsInOrder;
  private final List<Line> linesInOrder;
  private final Map<PointName, Point> points = new HashMap<>();
  private final Map<LineName, Line> lines = new HashMap<>();

  /**
   * Laws found so far: one network is balanced often, and most of it stays from one to the next.
   */
  private final Map<LineName, LineLaws> laws = new ConcurrentHashMap<>();

  /** Points and parts by their kind, once they were asked for. */
  private final Map<Class<?>, List<?>> kinds = new ConcurrentHashMap<>();

  /**
   * A network.
   *
   * @param siteElevationM height of the site above sea level, m
   * @param points in the order of the file
   * @param lines in the order of the file
   * @throws IllegalArgumentException if two points or lines share a name or a line joins a point
   *     that is not there, or one with a skimmer does not begin at a basin
   */
  public Network(Water water, double siteElevationM, List<Point> points, List<Line> lines) {
    Require.finite("elevation of the site", siteElevationM, "m");
    this.water = Require.given("water", water);
    this.siteElevationM = siteElevationM;
    this.pointsInOrder = Require.all("points of a network", points);
    this.linesInOrder = Require.all("lines of a network", lines);
    for (Point point : pointsInOrder) {
      Require.name("name of a point", point.name().value());
      if (this.points.put(point.name(), point) != null) {
        throw new IllegalArgumentException("two points are called \"" + point.name() + "\"");
      }
    }
    for (Line line : linesInOrder) {
      Require.name("name of a line", line.name().value());
      if (this.lines.put(line.name(), line) != null) {
        throw new IllegalArgumentException("two lines are called \"" + line.name() + "\"");
      }
      requirePoint(line, line.from());
      requirePoint(line, line.to());
      if (line.from().equals(line.to())) {
        throw new IllegalArgumentException("line \"" + line.name() + "\" ends where it begins");
      }
      requireWaterForSkimmer(line);
    }
  }

  private void requirePoint(Line line, PointName end) {
    if (!points.containsKey(end)) {
      throw new IllegalArgumentException(
          "line \"" + line.name() + "\" ends at \"" + end + "\", which is not there");
    }
  }

  private void requireWaterForSkimmer(Line line) {
    boolean fromBasin = point(line.from()) instanceof Basin;
    if (!fromBasin && line.has(Skimmer.class)) {
      throw new IllegalArgumentException(
          "line \""
              + line.name()
              + "\" has a skimmer and begins at \""
              + line.from()
              + "\"; it must begin at a basin");
    }
  }

  /** The water in it. */
  public Water water() {
    return water;
  }

  /** Height of the site above sea level, m. */
  public double siteElevationM() {
    return siteElevationM;
  }

  /** All points, in the order of the file. */
  public List<Point> points() {
    return pointsInOrder;
  }

  /** All lines, in the order of the file. */
  public List<Line> lines() {
    return linesInOrder;
  }

  /** The points of a kind, in the order of the file. */
  @SuppressWarnings("unchecked") // each kind's list is made below
  public <P extends Point> List<P> points(Class<P> kind) {
    return (List<P>)
        kinds.computeIfAbsent(
            kind, any -> pointsInOrder.stream().filter(kind::isInstance).map(kind::cast).toList());
  }

  /** The parts of a kind where they stand, in the order of the file. */
  @SuppressWarnings("unchecked") // each kind's list is made below
  public <P extends Part> List<Placed<P>> placed(Class<P> kind) {
    return (List<Placed<P>>)
        kinds.computeIfAbsent(
            kind,
            any -> linesInOrder.stream().flatMap(line -> line.placed(kind).stream()).toList());
  }

  /** Falls and outlets, in the order of the file. */
  public List<Point> waysOut() {
    return pointsInOrder.stream()
        .filter(point -> point instanceof Fall || point instanceof Outlet)
        .toList();
  }

  /** The point of a name, if there is one. */
  public Optional<Point> findPoint(PointName name) {
    return Optional.ofNullable(points.get(name));
  }

  /** The line of a name, if there is one. */
  public Optional<Line> findLine(LineName name) {
    return Optional.ofNullable(lines.get(name));
  }

  /** The point of a name; throws if there is none. */
  public Point point(PointName name) {
    Point point = points.get(name);
    if (point == null) {
      throw new IllegalArgumentException("there is no point \"" + name + "\"");
    }
    return point;
  }

  /** The line of a name; throws if there is none. */
  public Line line(LineName name) {
    Line line = lines.get(name);
    if (line == null) {
      throw new IllegalArgumentException("there is no line \"" + name + "\"");
    }
    return line;
  }

  /** The skimmers that draw from a basin, in the order of the network. */
  public List<Skimmer> skimmersOf(PointName basin) {
    return placed(Skimmer.class).stream()
        .filter(skimmer -> skimmer.line().from().equals(basin))
        .map(Placed::part)
        .toList();
  }

  /** Whether any line has a pump that is chosen. */
  public boolean isPumped() {
    return !placed(Pump.class).isEmpty();
  }

  /** What a line's parts find around them. */
  public Setting settingOf(Line line) {
    Point start = point(line.from());
    OptionalDouble level =
        start instanceof Basin basin ? OptionalDouble.of(basin.levelM()) : OptionalDouble.empty();
    return new Setting(water, level);
  }

  /** The laws of a line's entrance, parts and exit by themselves, in order. */
  public List<HeadLaw> ownLawsOf(Line line) {
    return known(line).own();
  }

  /**
   * The same, with what each change of bore takes counted to the second of its runs, so that they
   * add up to the line's.
   */
  public List<HeadLaw> lawsOf(Line line) {
    return known(line).withChanges().laws();
  }

  /** The head law of a whole line. */
  public HeadLaw lawOf(Line line) {
    return known(line).withChanges();
  }

  /** Whether a line is this very one of the network; a like one counts as another. */
  @SuppressWarnings("ReferenceEquality") // to compare all of them takes longer than to know laws
  private boolean has(Line line) {
    return line == lines.get(line.name());
  }

  private LineLaws known(Line line) {
    return has(line)
        ? laws.computeIfAbsent(line.name(), name -> LineLaws.of(line, settingOf(line)))
        : LineLaws.of(line, settingOf(line));
  }

  /**
   * The same water with other points and lines; the laws of lines that stay are not found anew.
   *
   * @throws IllegalArgumentException as for any network
   */
  public Network with(List<Point> otherPoints, List<Line> otherLines) {
    Network other = new Network(water, siteElevationM, otherPoints, otherLines);
    for (Line line : otherLines) {
      LineLaws found = laws.get(line.name());
      boolean sameStart = points.get(line.from()) == other.points.get(line.from());
      boolean stays = has(line) && (sameStart || !line.has(Skimmer.class));
      if (found != null && stays) {
        other.laws.put(line.name(), found);
      }
    }
    return other;
  }

  /** The same network with one line replaced by another of its name. */
  public Network withLine(Line changed) {
    return withLines(List.of(changed));
  }

  /**
   * The same network with lines replaced by others of their names, all at once: one by one each
   * would take as long as all together.
   */
  public Network withLines(Collection<Line> changed) {
    Map<LineName, Line> byName = new HashMap<>();
    for (Line line : changed) {
      line(line.name());
      byName.put(line.name(), line);
    }
    return with(
        points(), lines().stream().map(line -> byName.getOrDefault(line.name(), line)).toList());
  }

  /** The same network with one point replaced by another of its name. */
  public Network withPoint(Point changed) {
    point(changed.name());
    return with(
        points().stream()
            .map(point -> point.name().equals(changed.name()) ? changed : point)
            .toList(),
        lines());
  }

  /**
   * The same network with one part of a line replaced.
   *
   * @param index the part's place in its line, counted from 0
   */
  public Network withPart(LineName name, int index, Part changed) {
    return withLine(line(name).withPart(index, changed));
  }
}
