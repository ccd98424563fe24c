package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.WaterWays;

/**
 * Valves that set some falls together.
 *
 * @param valves side by side: no water runs through two of them
 * @param falls that are set with them: those that have no valve nearer by
 */
record Throttle(List<ValvePlace> valves, Set<PointName> falls) {
  Throttle {
    valves = List.copyOf(valves);
  }

  /**
   * The throttles of a network: each fall is set by the valves through which the fewest other falls
   * are fed.
   *
   * @param ways of the water
   * @param places of the valves that may be set
   * @param falls to be set
   */
  static List<Throttle> assign(WaterWays ways, List<ValvePlace> places, Set<PointName> falls) {
    Map<Set<PointName>, List<ValvePlace>> byFed = new LinkedHashMap<>();
    for (ValvePlace place : places) {
      Set<PointName> fed = ways.reached(place.line(), falls);
      byFed.computeIfAbsent(fed, key -> new ArrayList<>()).add(place);
    }
    Map<PointName, Set<PointName>> nearest = new HashMap<>();
    for (Set<PointName> fed : byFed.keySet()) {
      fed.forEach(fall -> nearest.merge(fall, fed, (a, b) -> b.size() < a.size() ? b : a));
    }
    Map<Set<PointName>, Set<PointName>> setBy = new LinkedHashMap<>();
    for (PointName fall : falls) {
      Optional.ofNullable(nearest.get(fall))
          .ifPresent(fed -> setBy.computeIfAbsent(fed, key -> new LinkedHashSet<>()).add(fall));
    }
    List<Throttle> throttles = new ArrayList<>();
    setBy.forEach(
        (fed, set) -> throttles.add(new Throttle(lastOnTheWay(ways, byFed.get(fed)), set)));
    return throttles;
  }

  /** Of valves one after the other only the last. */
  private static List<ValvePlace> lastOnTheWay(WaterWays ways, List<ValvePlace> places) {
    List<ValvePlace> last = new ArrayList<>();
    for (ValvePlace place : places) {
      boolean another = places.stream().anyMatch(other -> isBehind(ways, place, other));
      if (!another) {
        last.add(place);
      }
    }
    return last;
  }

  private static boolean isBehind(WaterWays ways, ValvePlace place, ValvePlace other) {
    return other.line().equals(place.line())
        ? other.partIndex() > place.partIndex()
        : ways.linesAfter(place.line()).contains(other.line());
  }
}
