package rillwright.solver.study.mending;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.law.NoLoss;
import rillwright.solver.network.Basin;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Spill;
import rillwright.solver.network.Tee;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * The most that a fall can get whatever is done to pipes, fittings and valves, also where its water
 * comes in a ring or from several pumps: nothing on the way takes any head, every other way out is
 * shut, and every pump draws from the highest open water. Along each way that the water takes, head
 * falls but for one pump; so each pump gives at most what it gives against the fall's own level.
 */
public final class LossFree {
  private static final LineEnd NO_END = new LineEnd(EndLoss.NONE, Optional.empty());

  private final Network network;
  private final NetworkGraph graph;
  private final Point fall;

  private LossFree(Network network, PointName fall) {
    this.network = network;
    this.graph = new NetworkGraph(network);
    this.fall = network.point(fall);
  }

  /**
   * The most that a fall can get, m³/s; empty where that cannot be said: water comes from open
   * water above it, through several lines with pumps one after another, or is let in at a tee.
   *
   * @param fastest a pump at its greatest speed
   */
  public static OptionalDouble mostM3PerS(
      Network network, PointName fall, UnaryOperator<Pump> fastest) {
    return new LossFree(network, fall).most(fastest);
  }

  private OptionalDouble most(UnaryOperator<Pump> fastest) {
    double sillM = sillM();
    Set<PointName> near = reachedFrom(fall.name());
    boolean isFedFromAbove =
        near.stream()
            .filter(name -> !name.equals(fall.name()))
            .anyMatch(name -> sourceM(network.point(name)) > sillM);
    boolean isLetIn = network.points(Tee.class).stream().anyMatch(tee -> tee.drawM3PerS() < 0);
    List<Line> pumps = pumpsInto(near);
    boolean isInSeries = pumps.stream().anyMatch(line -> isFedByAPump(line, near));
    if (isFedFromAbove || isLetIn || isInSeries) {
      return OptionalDouble.empty();
    }
    return pumps.isEmpty() ? OptionalDouble.of(0) : flow(pumps, fastest);
  }

  private double sillM() {
    return fall.heldHeadM()
        .orElseGet(() -> fall.spill().map(Spill::levelM).orElse(Double.POSITIVE_INFINITY));
  }

  /** The level of open water at a point; none elsewhere. */
  private static double sourceM(Point point) {
    if (point instanceof Outlet outlet) {
      return outlet.levelM().orElse(Double.NEGATIVE_INFINITY);
    }
    return point instanceof Basin basin ? basin.levelM() : Double.NEGATIVE_INFINITY;
  }

  /** Points from which water gets to one without a pump and without passing open water. */
  private Set<PointName> reachedFrom(PointName start) {
    Set<PointName> reached = new LinkedHashSet<>(List.of(start));
    Deque<PointName> next = new ArrayDeque<>(reached);
    while (!next.isEmpty()) {
      PointName point = next.remove();
      if (!point.equals(start) && network.point(point).heldHeadM().isPresent()) {
        continue;
      }
      for (Line line : graph.linesAt(point)) {
        PointName other = line.from().equals(point) ? line.to() : line.from();
        if (!line.has(Pump.class) && reached.add(other)) {
          next.add(other);
        }
      }
    }
    return reached;
  }

  /** Lines whose pumps lift water to some points that are not open water. */
  private List<Line> pumpsInto(Set<PointName> points) {
    return network.lines().stream()
        .filter(line -> line.has(Pump.class))
        .filter(line -> points.contains(line.to()))
        .filter(line -> line.to().equals(fall.name()) || isWithinPipes(line.to()))
        .toList();
  }

  private boolean isWithinPipes(PointName point) {
    return network.point(point).heldHeadM().isEmpty();
  }

  private boolean isFedByAPump(Line line, Set<PointName> near) {
    if (!isWithinPipes(line.from())) {
      return false;
    }
    Set<PointName> inlet = reachedFrom(line.from());
    boolean isARing =
        !Collections.disjoint(
            inlet.stream().filter(this::isWithinPipes).toList(),
            near.stream().filter(this::isWithinPipes).toList());
    return isARing || pumpsInto(inlet).stream().anyMatch(other -> isWithinPipes(other.to()));
  }

  private OptionalDouble flow(List<Line> pumps, UnaryOperator<Pump> fastest) {
    double highestM =
        network.points().stream()
            .mapToDouble(LossFree::sourceM)
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    Basin pond =
        new Basin(
            new PointName(fall.name().value() + " source"),
            highestM,
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    List<Line> lines = new ArrayList<>();
    for (Line line : pumps) {
      List<Part> parts = new ArrayList<>();
      line.placed(Pump.class).forEach(pump -> parts.add(fastest.apply(pump.part())));
      parts.add(new Loss(NoLoss.forwardOnly(), Optional.empty()));
      lines.add(
          new Line(line.name(), pond.name(), fall.name(), Optional.empty(), parts, NO_END, NO_END));
    }
    Network free =
        new Network(network.water(), network.siteElevationM(), List.of(pond, fall), lines);
    try {
      return OptionalDouble.of(SteadyStateFinder.find(free).point(fall.name()).outflowM3PerS());
    } catch (NoBalance | SearchFailed unbalanced) {
      return OptionalDouble.empty();
    }
  }
}
