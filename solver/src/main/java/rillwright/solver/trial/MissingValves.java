package rillwright.solver.trial;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.solver.network.Line;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.Targets;
import rillwright.solver.pumping.WaterWays;
import rillwright.solver.steady.SteadyState;

/** Falls that have to be throttled and that no valve throttles without another that must not be. */
public final class MissingValves {
  private MissingValves() {}

  /**
   * Those of a state, the valves as they stand: of the falls that get more than their target, or
   * where that alone is wrong of those that get far too much.
   */
  public static List<PointName> in(SteadyState state, Targets targets) {
    double worst = targets.shareAt(targets.worstIn(state), state);
    boolean onlyTooMuch = worst >= Verdict.ENOUGH_SHARE && !state.starves();
    double most = onlyTooMuch ? Verdict.TOO_MUCH_SHARE : 1;
    Set<PointName> throttled =
        targets.falls().stream()
            .filter(fall -> targets.shareAt(fall, state) > most)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    Set<PointName> missing = new LinkedHashSet<>(throttled);
    WaterWays ways = new WaterWays(state);
    for (Line line : state.network().lines()) {
      Set<PointName> reached = ways.reached(line.name(), targets.falls());
      if (line.has(Valve.class) && throttled.containsAll(reached)) {
        missing.removeAll(reached);
      }
    }
    return List.copyOf(missing);
  }
}
