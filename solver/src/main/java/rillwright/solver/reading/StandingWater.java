package rillwright.solver.reading;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Setting;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.SteadyState;

/**
 * Where water stands that the balance leaves undetermined: it has drained to the lowest crest,
 * outlet or open water that lines let it reach; where it can reach none it has filled up to the
 * highest open water that lines let reach it.
 */
final class StandingWater {
  private final SteadyState state;
  private final Network network;

  StandingWater(SteadyState state) {
    this.state = state;
    this.network = state.network();
  }

  /**
   * Total head in a line upstream of one of its parts, m; empty where nothing holds the water.
   *
   * @param index of the part, from 0
   */
  OptionalDouble headBefore(LineName name, int index) {
    LineState line = state.line(name);
    OptionalDouble known = line.parts().get(index).headBeforeM();
    if (known.isPresent() || line.open()) {
      return known;
    }
    Setting setting = network.settingOf(line.line());
    List<Part> parts = line.line().parts();
    boolean openBehind =
        parts.subList(index, parts.size()).stream().allMatch(part -> passes(part.law(setting)));
    if (openBehind) {
      return levelM(line.line().to());
    }
    OptionalDouble head = levelM(line.line().from());
    for (Part part : parts.subList(0, index)) {
      OptionalDouble loss = part.headLossAtRest(setting);
      head =
          head.isPresent() && loss.isPresent()
              ? OptionalDouble.of(head.getAsDouble() - loss.getAsDouble())
              : OptionalDouble.empty();
    }
    return head;
  }

  private static boolean passes(HeadLaw law) {
    return law.leastFlow() < 0 && law.greatestFlow() > 0;
  }

  private OptionalDouble levelM(PointName point) {
    OptionalDouble known = state.point(point).headM();
    if (known.isPresent()) {
      return known;
    }
    OptionalDouble lowest =
        reached(point, Way.DOWNSTREAM).stream()
            .map(StandingWater::wayOutM)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .min();
    return lowest.isPresent()
        ? lowest
        : reached(point, Way.UPSTREAM).stream()
            .map(Point::heldHeadM)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .max();
  }

  private static OptionalDouble wayOutM(Point point) {
    return point
        .spill()
        .map(spill -> OptionalDouble.of(spill.levelM()))
        .orElseGet(point::heldHeadM);
  }

  private enum Way {
    DOWNSTREAM,
    UPSTREAM
  }

  /** All points that water gets to from a point, or from which it gets there. */
  private List<Point> reached(PointName start, Way way) {
    Set<PointName> reached = new LinkedHashSet<>(Set.of(start));
    Deque<PointName> waiting = new ArrayDeque<>(reached);
    while (!waiting.isEmpty()) {
      PointName point = waiting.pop();
      for (Line line : network.lines()) {
        HeadLaw law = network.lawOf(line);
        boolean forward = way == Way.DOWNSTREAM ? law.greatestFlow() > 0 : law.leastFlow() < 0;
        boolean backward = way == Way.DOWNSTREAM ? law.leastFlow() < 0 : law.greatestFlow() > 0;
        if (line.from().equals(point) && forward && reached.add(line.to())) {
          waiting.push(line.to());
        }
        if (line.to().equals(point) && backward && reached.add(line.from())) {
          waiting.push(line.from());
        }
      }
    }
    return reached.stream().map(network::point).toList();
  }
}
