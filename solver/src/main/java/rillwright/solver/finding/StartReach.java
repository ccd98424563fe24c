package rillwright.solver.finding;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.SteadyState;

/**
 * How high pumps can lift water while nothing flows yet: the level that a pump draws from and its
 * published shut-off head, carried on through the pipes behind it.
 */
final class StartReach {
  private final Map<PointName, Double> reachM = new HashMap<>();
  private final SteadyState state;

  private StartReach(SteadyState state) {
    this.state = state;
  }

  static StartReach of(SteadyState state) {
    StartReach reach = new StartReach(state);
    for (Line line : state.network().lines()) {
      OptionalDouble level = state.point(line.from()).drawnHeadM();
      double shutOff = shutOffHeadM(line);
      if (shutOff > 0 && level.isPresent()) {
        reach.carry(line.to(), level.getAsDouble() + shutOff);
      }
    }
    return reach;
  }

  /** The level that pumps reach at a point, m; empty where none does. */
  OptionalDouble at(PointName point) {
    Double level = reachM.get(point);
    return level == null ? OptionalDouble.empty() : OptionalDouble.of(level);
  }

  private static double shutOffHeadM(Line line) {
    double sum = 0;
    for (Part part : line.parts()) {
      sum += part instanceof Pump pump ? pump.set().publishedShutOffHeadM() : 0;
    }
    return sum;
  }

  /** Through pipes that join closed points; open water starts anew. */
  private void carry(PointName name, double level) {
    Point point = state.network().point(name);
    if (level <= reachM.getOrDefault(name, Double.NEGATIVE_INFINITY)) {
      return;
    }
    reachM.put(name, level);
    if (point.heldHeadM().isPresent() || point.spill().isPresent()) {
      return;
    }
    for (Line line : state.network().lines()) {
      if (shutOffHeadM(line) == 0 && Blockage.listIn(state.network(), line).isEmpty()) {
        if (line.from().equals(name)) {
          carry(line.to(), level);
        } else if (line.to().equals(name)) {
          carry(line.from(), level);
        }
      }
    }
  }
}
