package rillwright.solver.study.valvesetting;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.HeldToTarget;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * A network in which what goes elsewhere is held back: falls that none of the valves holds back get
 * no more than their target, and valves that feed no fall with a target are shut. What a fall lacks
 * then it lacks for lack of head, not of a valve.
 *
 * @param favoured falls that get more than their share
 * @param leftAlone valves that feed no fall with a target
 */
record HeldOthers(Targets targets, Set<PointName> favoured, List<ValvePlace> leftAlone) {
  HeldOthers {
    favoured = new LinkedHashSet<>(favoured);
    leftAlone = List.copyOf(leftAlone);
  }

  /**
   * The network for one fall: all others are held back.
   *
   * @param shut the network as {@link #shut} makes it
   */
  Network in(Network shut, PointName fall) {
    List<PointName> others = favoured.stream().filter(other -> !other.equals(fall)).toList();
    return HeldToTarget.of(shut, targets, others);
  }

  /**
   * With the valves that feed no fall with a target shut, unless something else needs that water.
   */
  Network shut(Network network) {
    Map<ValvePlace, Valve.Setpoint> closed = new LinkedHashMap<>();
    leftAlone.forEach(place -> closed.put(place, Valve.GivenLoss.SHUT));
    Network shut = ValvePlace.withLosses(network, closed);
    try {
      SteadyStateFinder.find(shut);
      return shut;
    } catch (NoBalance drawsGoShort) {
      return network;
    }
  }
}
