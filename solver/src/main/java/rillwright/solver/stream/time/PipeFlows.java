package rillwright.solver.stream.time;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Spill;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * The part of a network between waters of known level: one line, or several that meet in tees. Its
 * flows follow from those levels at every moment.
 */
final class PipeFlows {
  /** Within this height above its floor a basin begins to give less, m. */
  private static final double RAMP_M = 1e-3;

  private final Network network;
  private final List<Line> lines;
  private final Set<PointName> held;
  private final Optional<HeldLine> alone;
  private final Network inner;
  private long steps;

  private PipeFlows(Network network, List<Line> lines, Set<PointName> held) {
    this.network = network;
    this.lines = lines;
    this.held = held;
    Line first = lines.get(0);
    boolean heldStart = held.contains(first.from());
    boolean end = held.contains(first.to()) || spill(first).isPresent();
    this.alone =
        lines.size() == 1 && heldStart && end
            ? Optional.of(
                new HeldLine(
                    network,
                    first,
                    held.contains(first.to()) ? List.of() : List.of(spill(first).get().law())))
            : Optional.empty();
    this.inner = alone.isPresent() ? network : innerNetwork();
  }

  private Optional<Spill> spill(Line line) {
    return network.point(line.to()).spill();
  }

  private Network innerNetwork() {
    Set<PointName> names = new LinkedHashSet<>();
    for (Line line : lines) {
      names.add(line.from());
      names.add(line.to());
    }
    List<Point> points =
        names.stream()
            .map(name -> held.contains(name) ? heldAt(name, 0) : network.point(name))
            .toList();
    return network.with(points, lines);
  }

  private static Basin heldAt(PointName name, double levelM) {
    OptionalDouble unknown = OptionalDouble.empty();
    return new Basin(name, levelM, Optional.empty(), unknown, unknown, unknown);
  }

  /**
   * The parts of a network.
   *
   * @param held points whose level is known at every moment
   */
  static List<PipeFlows> listOf(Network network, Set<PointName> held) {
    Map<PointName, Integer> groupOf = new HashMap<>();
    List<List<Line>> groups = new ArrayList<>();
    for (Line line : network.lines()) {
      Set<Integer> met = new LinkedHashSet<>();
      for (PointName end : List.of(line.from(), line.to())) {
        if (!held.contains(end) && groupOf.containsKey(end)) {
          met.add(groupOf.get(end));
        }
      }
      List<Line> group = new ArrayList<>(List.of(line));
      met.forEach(index -> group.addAll(groups.get(index)));
      met.forEach(index -> groups.set(index, List.of()));
      for (Line member : group) {
        for (PointName end : List.of(member.from(), member.to())) {
          if (!held.contains(end)) {
            groupOf.put(end, groups.size());
          }
        }
      }
      groups.add(group);
    }
    return groups.stream()
        .filter(group -> !group.isEmpty())
        .map(group -> new PipeFlows(network, group, held))
        .toList();
  }

  /** What their balances took so far: Newton steps, each counted for every line. */
  static long stepsOf(List<PipeFlows> all) {
    return all.stream().mapToLong(flows -> flows.steps).sum();
  }

  boolean contains(Line line) {
    return lines.stream().anyMatch(member -> member.name().equals(line.name()));
  }

  /**
   * What leaves the held waters (negative) or reaches them and the ways out of the network, m³/s;
   * of chambers as if they stood above their intakes.
   *
   * @param levelM of the held points
   */
  Map<PointName, Double> gains(Map<PointName, Double> levelM) {
    Map<PointName, Double> gains = new LinkedHashMap<>();
    if (alone.isPresent()) {
      Line line = lines.get(0);
      double to =
          held.contains(line.to()) ? levelM.get(line.to()) : spill(line).orElseThrow().levelM();
      double flow = alone.get().flowM3PerS(levelM.get(line.from()), to);
      double ramp = flow > 0 ? ramp(line.from(), levelM) : ramp(line.to(), levelM);
      gains.merge(line.from(), -ramp * flow, Double::sum);
      gains.merge(line.to(), ramp * flow, Double::sum);
      return gains;
    }
    double ramp = 1;
    Network at =
        inner.with(
            inner.points().stream()
                .map(
                    point ->
                        held.contains(point.name())
                            ? heldAt(point.name(), levelM.get(point.name()))
                            : point)
                .toList(),
            inner.lines());
    SteadyState state = SteadyStateFinder.find(at);
    steps += (long) state.iterations() * lines.size();
    for (Point point : at.points()) {
      double out = state.point(point.name()).outflowM3PerS();
      if (held.contains(point.name()) && out < 0) {
        ramp = Math.min(ramp, ramp(point.name(), levelM));
      }
      if (out != 0) {
        gains.put(point.name(), out);
      }
    }
    double all = ramp;
    gains.replaceAll((name, gain) -> all * gain);
    return gains;
  }

  /**
   * How much of what it should give a water can give: less at a basin's floor and, of a box, at its
   * crest: how deep it is below is not known, and is not in the water in transit either.
   */
  private double ramp(PointName name, Map<PointName, Double> levelM) {
    Point point = network.point(name);
    double least = Double.NEGATIVE_INFINITY;
    if (point instanceof Basin basin && basin.shape().isPresent()) {
      least = basin.shape().get().floorM();
    } else if (point instanceof Fall fall) {
      least = fall.crestM();
    }
    return least == Double.NEGATIVE_INFINITY || !levelM.containsKey(name)
        ? 1
        : Math.max(0, Math.min(1, (levelM.get(name) - least) / RAMP_M));
  }
}
