package rillwright.solver.pumping;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;

/** Where the water of a line runs on to, in a steady state; open water at a held level ends it. */
public final class WaterWays {
  private final Network network;
  private final SteadyState state;
  private final Map<PointName, List<Line>> onwards = new HashMap<>();
  private final Map<PointName, Integer> order = new HashMap<>();

  /** The ways in a state. */
  public WaterWays(SteadyState state) {
    this.network = state.network();
    this.state = state;
    for (Line line : network.lines()) {
      onwards.computeIfAbsent(start(line), point -> new ArrayList<>()).add(line);
    }
    network.points().forEach(point -> order.put(point.name(), order.size()));
  }

  /** The lines that water of a line meets after it, in no order. */
  public Set<LineName> linesAfter(LineName line) {
    Set<LineName> met = new HashSet<>();
    Deque<PointName> open = new ArrayDeque<>();
    open.add(end(network.line(line)));
    while (!open.isEmpty()) {
      PointName point = open.remove();
      if (network.point(point).heldHeadM().isPresent()) {
        continue;
      }
      for (Line next : onwards.getOrDefault(point, List.of())) {
        if (met.add(next.name())) {
          open.add(end(next));
        }
      }
    }
    return met;
  }

  /** Those of some points that water of a line reaches, in the order of the network. */
  public Set<PointName> reached(LineName line, Set<PointName> points) {
    Set<PointName> ends = new HashSet<>();
    ends.add(end(network.line(line)));
    linesAfter(line).forEach(after -> ends.add(end(network.line(after))));
    return ends.stream()
        .filter(points::contains)
        .sorted(Comparator.comparing(order::get))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private PointName start(Line line) {
    return runsBack(line) ? line.to() : line.from();
  }

  private PointName end(Line line) {
    return runsBack(line) ? line.from() : line.to();
  }

  private boolean runsBack(Line line) {
    return state.line(line.name()).flowM3PerS() < 0;
  }
}
