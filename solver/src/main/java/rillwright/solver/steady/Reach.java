package rillwright.solver.steady;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.topology.NetworkGraph;

/**
 * How high water comes in lines that carry nothing yet: the head at their upstream end, plus the
 * published shut-off heads of their own running pumps, less the cracking heads of their check
 * valves. Where nothing flows so that no head is determined, that of the points upstream is carried
 * on in the same way.
 */
final class Reach {
  private final Network network;
  private final Imposed imposed;
  private final Optional<SteadyState> state;
  private final Set<LineName> waiting;

  /** How high water stands at each point to which any comes, m. */
  private final Map<PointName, Double> headM = new LinkedHashMap<>();

  /**
   * Reaches in a network.
   *
   * @param state what happens in it while the waiting lines carry nothing; empty if it has no
   *     balance then
   * @param waiting lines that have not started
   */
  Reach(NetworkGraph graph, Imposed imposed, Optional<SteadyState> state, Set<LineName> waiting) {
    this.network = graph.network();
    this.imposed = imposed;
    this.state = state;
    this.waiting = waiting;
    carryOn(graph);
  }

  /** Whether a line's water would come from its first end. */
  boolean isForward(Line line) {
    boolean pumped =
        line.parts().stream().anyMatch(part -> part instanceof Pump pump && pump.set().speed() > 0);
    if (pumped || network.lawOf(line).leastFlow() >= 0) {
      return true;
    }
    double from = atM(line.from()).orElse(Double.NEGATIVE_INFINITY);
    return from >= atM(line.to()).orElse(Double.NEGATIVE_INFINITY);
  }

  /**
   * How high water comes at a place in a line with nothing flowing, m; empty if none comes.
   *
   * @param place among the line's parts, counted from 0
   */
  OptionalDouble atPlaceM(Line line, int place) {
    if (isForward(line)) {
      return plus(atM(line.from()), risenM(line.parts().subList(0, place)));
    }
    return atM(line.to());
  }

  /** What parts add to the head of water that passes them with nothing flowing, m. */
  private static double risenM(List<Part> parts) {
    double sum = 0;
    for (Part part : parts) {
      if (part instanceof Pump pump) {
        sum += pump.set().publishedShutOffHeadM();
      } else if (part instanceof CheckValve valve) {
        sum -= valve.crackingHeadM();
      }
    }
    return sum;
  }

  private OptionalDouble atM(PointName point) {
    Double head = headM.get(point);
    return head == null ? OptionalDouble.empty() : OptionalDouble.of(head);
  }

  /** The heads that are determined, and carried on from them the highest that come to others. */
  private void carryOn(NetworkGraph graph) {
    for (Point point : network.points()) {
      OptionalDouble known =
          state
              .map(found -> found.point(point.name()).drawnHeadM())
              .orElseGet(() -> imposed.heldHeadM(point));
      known.ifPresent(head -> headM.put(point.name(), head));
    }
    Set<PointName> determined = Set.copyOf(headM.keySet());
    imposed
        .lineFlowM3PerS()
        .forEach(
            (name, flow) -> {
              Line line = network.line(name);
              PointName end = flow > 0 ? line.to() : line.from();
              if (flow != 0 && !determined.contains(end)) {
                headM.put(end, Double.POSITIVE_INFINITY);
              }
            });
    Map<PointName, PointName> cameFrom = new HashMap<>();
    Deque<PointName> open = new ArrayDeque<>(headM.keySet());
    while (!open.isEmpty()) {
      PointName point = open.remove();
      for (Line line : graph.linesAt(point)) {
        PointName next = line.from().equals(point) ? line.to() : line.from();
        double brought =
            determined.contains(next) ? Double.NEGATIVE_INFINITY : broughtM(line, point);
        if (brought > atM(next).orElse(Double.NEGATIVE_INFINITY)
            && !isOnTheWay(next, point, cameFrom)) {
          headM.put(next, brought);
          cameFrom.put(next, point);
          open.add(next);
        }
      }
    }
  }

  /** The head that a line brings from one of its ends to the other; −∞ if it brings no water. */
  private double broughtM(Line line, PointName from) {
    boolean imposes = imposed.lineFlowM3PerS().containsKey(line.name());
    boolean forward = line.from().equals(from);
    if (imposes || waiting.contains(line.name())) {
      return Double.NEGATIVE_INFINITY;
    }
    HeadLaw law = network.lawOf(line);
    boolean passes = forward ? law.greatestFlow() > 0 : law.leastFlow() < 0;
    return passes
        ? headM.get(from) + (forward ? risenM(line.parts()) : 0)
        : Double.NEGATIVE_INFINITY;
  }

  /**
   * Whether the head at a point was carried there over another: none is carried round in a ring.
   */
  private static boolean isOnTheWay(
      PointName point, PointName to, Map<PointName, PointName> cameFrom) {
    for (PointName at = to; at != null; at = cameFrom.get(at)) {
      if (at.equals(point)) {
        return true;
      }
    }
    return false;
  }

  private static OptionalDouble plus(OptionalDouble head, double risenM) {
    return head.isPresent() ? OptionalDouble.of(head.getAsDouble() + risenM) : head;
  }

  /** The first high point over which water does not come, in the order of the water; if any. */
  Optional<Course.NotStarted> barrierIn(Line line, Map<Integer, HighPoint> judged) {
    for (Map.Entry<Integer, HighPoint> entry : judged.entrySet()) {
      OptionalDouble reach = atPlaceM(line, entry.getKey());
      if (!(reach.orElse(Double.NEGATIVE_INFINITY) > entry.getValue().elevationM())) {
        return Optional.of(new Course.NotStarted(entry.getKey(), reach));
      }
    }
    return Optional.empty();
  }
}
