package rillwright.solver.study.valvesetting;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;

/**
 * What falls and outlets want, m³/s, above 0, in the order of the network.
 *
 * @param wantM3PerS by name
 */
record Wishes(Map<PointName, Double> wantM3PerS) {

  /** The wishes of a network; a wish for nothing is none. */
  static Wishes of(Network network) {
    Map<PointName, Double> wants = new LinkedHashMap<>();
    for (Point point : network.points()) {
      double want = point.wantM3PerS().orElse(0);
      if (want > 0) {
        wants.put(point.name(), want);
      }
    }
    return new Wishes(wants);
  }

  /** The falls and outlets with a wish. */
  Set<PointName> falls() {
    return wantM3PerS.keySet();
  }

  /** The wish of a fall, m³/s. */
  double of(PointName fall) {
    return wantM3PerS.get(fall);
  }

  /** What a fall gets as a multiple of its wish. */
  double share(SteadyState state, PointName fall) {
    return state.point(fall).outflowM3PerS() / of(fall);
  }

  /** The one of some falls with the smallest share. */
  PointName poorest(SteadyState state, Set<PointName> among) {
    PointName poorest = among.iterator().next();
    for (PointName fall : among) {
      poorest = share(state, fall) < share(state, poorest) ? fall : poorest;
    }
    return poorest;
  }
}
