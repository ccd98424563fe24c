package rillwright.solver.reading;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Where standing water can drain to: along lines, in the directions that they let it. */
final class Drains {
  private final Network network;

  Drains(Network network) {
    this.network = network;
  }

  /** The lowest crest, outlet or open water that water at a point can drain to, m. */
  OptionalDouble lowestM(PointName start) {
    Set<PointName> reached = new HashSet<>(Set.of(start));
    Deque<PointName> waiting = new ArrayDeque<>(reached);
    OptionalDouble lowest = OptionalDouble.empty();
    while (!waiting.isEmpty()) {
      Point point = network.point(waiting.pop());
      OptionalDouble way =
          point.spill().map(spill -> OptionalDouble.of(spill.levelM())).orElseGet(point::heldHeadM);
      if (way.isPresent()) {
        lowest = OptionalDouble.of(Math.min(way.getAsDouble(), lowest.orElse(way.getAsDouble())));
      }
      for (Line line : network.lines()) {
        HeadLaw law = network.lawOf(line);
        if (line.from().equals(point.name()) && law.greatestFlow() > 0 && reached.add(line.to())) {
          waiting.push(line.to());
        }
        if (line.to().equals(point.name()) && law.leastFlow() < 0 && reached.add(line.from())) {
          waiting.push(line.from());
        }
      }
    }
    return lowest;
  }
}
