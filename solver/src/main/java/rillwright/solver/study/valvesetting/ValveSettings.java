package rillwright.solver.study.valvesetting;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/**
 * Valve settings with which falls share as they target.
 *
 * @param targetFraction the multiple of its target that every fall gets at least
 * @param governing the fall that decides it
 * @param state with the valves so set
 * @param wideOpen with all these valves wide open
 * @param valves in the order of the network
 * @param order lines of the valves, first to set first
 * @param favoured falls that get more than the share, because no valve that could hold them back is
 *     among these, or it closes too coarsely
 * @param missingHeadM head that the pump lacks at the sum of the targets, m, with all other falls
 *     held to their targets whether or not there is a valve for it; 0 if it is strong enough; empty
 *     if no more head would do it, or head is lacking and there is no pump, or it is not known
 * @param headIsKnown whether that head is known: not if the search for it was cut short
 * @param heldToTargets whether the falls are held to their targets, though all could get more
 * @param opensGoverningWay whether one of the valves is wide open on the governing fall's way
 * @param cutShort whether the search was cut short because the job is large: the settings may be
 *     short of the best
 */
public record ValveSettings(
    double targetFraction,
    PointName governing,
    SteadyState state,
    SteadyState wideOpen,
    List<SetValve> valves,
    List<LineName> order,
    Set<PointName> favoured,
    OptionalDouble missingHeadM,
    boolean headIsKnown,
    boolean heldToTargets,
    boolean opensGoverningWay,
    boolean cutShort) {
  public ValveSettings {
    valves = List.copyOf(valves);
    order = List.copyOf(order);
    favoured = new LinkedHashSet<>(favoured);
  }

  /** What every fall and outlet gets with the valves so set, in the order of the network. */
  public List<PointState> listWaysOut() {
    return state.network().waysOut().stream().map(point -> state.point(point.name())).toList();
  }

  /** Those of the valves that are to be closed some way, in the order to set them. */
  public List<SetValve> listThrottled() {
    Map<LineName, List<SetValve>> byLine =
        valves.stream().collect(Collectors.groupingBy(set -> set.place().line()));
    return order.stream()
        .flatMap(line -> byLine.getOrDefault(line, List.of()).stream())
        .filter(
            set -> set.role() == SetValve.Role.THROTTLED || set.role() == SetValve.Role.TOO_COARSE)
        .distinct()
        .toList();
  }
}
