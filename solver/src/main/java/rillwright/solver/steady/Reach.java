package rillwright.solver.steady;

import java.util.HashSet;
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
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;

/**
 * How high water comes in lines that carry nothing yet: the head at their upstream end, plus the
 * published shut-off heads of their own running pumps, less the cracking heads of their check
 * valves. Where nothing flows so that no head is determined, that of the points before is carried
 * on in the same way.
 */
final class Reach {
  private final Network network;
  private final Imposed imposed;
  private final Optional<SteadyState> state;
  private final Set<LineName> waiting;

  /**
   * Reaches in a network.
   *
   * @param state what happens in it while the waiting lines carry nothing; empty if it has no
   *     balance then
   * @param waiting lines that have not started
   */
  Reach(Network network, Imposed imposed, Optional<SteadyState> state, Set<LineName> waiting) {
    this.network = network;
    this.imposed = imposed;
    this.state = state;
    this.waiting = waiting;
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
    return atM(point, new HashSet<>());
  }

  private OptionalDouble atM(PointName point, Set<PointName> passed) {
    OptionalDouble head =
        state
            .map(found -> found.point(point).drawnHeadM())
            .orElseGet(() -> imposed.heldHeadM(network.point(point)));
    if (head.isPresent() || !passed.add(point)) {
      return head;
    }
    for (Line line : network.lines()) {
      if (line.joins(point) && !waiting.contains(line.name())) {
        head = higher(head, brought(line, point, passed));
      }
    }
    passed.remove(point);
    return head;
  }

  private OptionalDouble brought(Line line, PointName point, Set<PointName> passed) {
    boolean forward = line.to().equals(point);
    Double given = imposed.lineFlowM3PerS().get(line.name());
    if (given != null) {
      boolean pushed = forward ? given > 0 : given < 0;
      return pushed ? OptionalDouble.of(Double.POSITIVE_INFINITY) : OptionalDouble.empty();
    }
    HeadLaw law = network.lawOf(line);
    if (forward) {
      return law.greatestFlow() > 0
          ? plus(atM(line.from(), passed), risenM(line.parts()))
          : OptionalDouble.empty();
    }
    return law.leastFlow() < 0 ? atM(line.to(), passed) : OptionalDouble.empty();
  }

  private static OptionalDouble higher(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(Math.max(one.getAsDouble(), other.getAsDouble()))
        : one.isPresent() ? one : other;
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
