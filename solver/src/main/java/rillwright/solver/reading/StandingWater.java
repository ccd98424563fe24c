package rillwright.solver.reading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Setting;
import rillwright.solver.network.topology.NetworkGraph;
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

  /** The lowest level that water at a point drains to, and the highest that fills it, m. */
  private final Map<PointName, Double> drained = new HashMap<>();

  private final Map<PointName, Double> filled = new HashMap<>();

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
    if (drained.isEmpty()) {
      spread(drained, StandingWater::wayOutM, Comparator.naturalOrder(), false);
      spread(filled, Point::heldHeadM, Comparator.reverseOrder(), true);
    }
    Double level = drained.getOrDefault(point, filled.get(point));
    return level == null ? OptionalDouble.empty() : OptionalDouble.of(level);
  }

  private static OptionalDouble wayOutM(Point point) {
    return point
        .spill()
        .map(spill -> OptionalDouble.of(spill.levelM()))
        .orElseGet(point::heldHeadM);
  }

  /**
   * Gives every point the first level in an order that water gets to from there.
   *
   * @param levelM the level at which water stands at a point, where it has one of its own
   * @param onwards whether the level goes the way of the water instead of against it
   */
  private void spread(
      Map<PointName, Double> levels,
      Function<Point, OptionalDouble> levelM,
      Comparator<Double> order,
      boolean onwards) {
    NetworkGraph graph = new NetworkGraph(network);
    record Source(PointName point, double levelM) {}
    List<Source> sources = new ArrayList<>();
    for (Point point : network.points()) {
      levelM.apply(point).ifPresent(level -> sources.add(new Source(point.name(), level)));
    }
    sources.sort((one, other) -> order.compare(one.levelM, other.levelM));
    Deque<PointName> waiting = new ArrayDeque<>();
    for (Source source : sources) {
      waiting.push(source.point);
      while (!waiting.isEmpty()) {
        PointName at = waiting.pop();
        if (levels.putIfAbsent(at, source.levelM) == null) {
          for (Line line : graph.linesAt(at)) {
            boolean begins = line.from().equals(at);
            HeadLaw law = network.lawOf(line);
            if (begins == onwards ? law.greatestFlow() > 0 : law.leastFlow() < 0) {
              waiting.push(begins ? line.to() : line.from());
            }
          }
        }
      }
    }
  }
}
