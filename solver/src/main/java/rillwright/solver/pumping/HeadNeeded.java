package rillwright.solver.pumping;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.Imposed;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * The head that a network needs from a pump at a flow: everything but the pump is balanced with
 * that flow imposed on its line. One point of the true system curve.
 *
 * @param flowM3PerS the pump's flow, m³/s
 * @param headM the head that it must give, m
 * @param state what happens in the network then; its pump gives no head there
 */
public record HeadNeeded(double flowM3PerS, double headM, SteadyState state) {

  /**
   * Stands for no flow: so little that nothing is lost to friction, yet it shows which fall runs
   * first.
   */
  private static final double HARDLY_ANY_M3_PER_S = 1e-9;

  private static final double RELATIVE_ACCURACY = 1e-9;

  /**
   * The head needed at a flow; empty if that flow cannot be drawn or carried.
   *
   * @param flowM3PerS m³/s, 0 or more
   */
  public static Optional<HeadNeeded> at(Network network, PumpPlace place, double flowM3PerS) {
    return at(network, place, flowM3PerS, Map.of());
  }

  /**
   * The head needed at a flow, with the outflow of some points imposed.
   *
   * @param outflowM3PerS flow out of points whose own spill does not count, m³/s
   */
  public static Optional<HeadNeeded> at(
      Network network, PumpPlace place, double flowM3PerS, Map<PointName, Double> outflowM3PerS) {
    return at(network, place, flowM3PerS, outflowM3PerS, Optional.empty());
  }

  /**
   * The same, found from a state that is like it.
   *
   * @param like what happened at another flow, where that is known
   */
  static Optional<HeadNeeded> at(
      Network network,
      PumpPlace place,
      double flowM3PerS,
      Map<PointName, Double> outflowM3PerS,
      Optional<SteadyState> like) {
    double flow = Math.max(flowM3PerS, HARDLY_ANY_M3_PER_S);
    if (!restOfLineLetsThrough(network, place, flow)) {
      return Optional.empty();
    }
    SteadyState state;
    try {
      Imposed imposed = new Imposed(Map.of(place.line(), flow), outflowM3PerS);
      state =
          like.isPresent()
              ? SteadyStateFinder.impose(network, imposed, like.get())
              : SteadyStateFinder.impose(network, imposed);
    } catch (NoBalance | SearchFailed drawnTooMuch) {
      return Optional.empty();
    }
    if (state.points().stream().anyMatch(HeadNeeded::isDrawnDown)) {
      return Optional.empty();
    }
    OptionalDouble lineLoss = state.line(place.line()).headLossM();
    return lineLoss.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new HeadNeeded(
                flow,
                restOfLineLoss(network, place, flow)
                    - lineLoss.getAsDouble()
                    + strongestSuctionM(network, place, flow, state),
                state));
  }

  /**
   * What suction in the pump's line would spare it and does not, since there is air: the head that
   * is missing where the line ends in air at a high point, m, 0 or more.
   */
  private static double strongestSuctionM(
      Network network, PumpPlace place, double flow, SteadyState state) {
    Line line = network.line(place.line());
    Map<Integer, HighPoint> climbs = line.climbs();
    if (climbs.values().stream().anyMatch(point -> point.air() == HighPoint.Air.PRIMED)) {
      return 0;
    }
    double head = state.point(line.to()).headM().orElse(Double.POSITIVE_INFINITY);
    List<HeadLaw> laws = network.lawsOf(line);
    head += laws.get(laws.size() - 1).headLossAt(flow);
    double strongest = 0;
    for (int i = line.parts().size() - 1; i > place.partIndex(); i--) {
      if (climbs.containsKey(i) && !line.sweepsAirFrom(i, flow)) {
        strongest = Math.max(strongest, -climbs.get(i).pressureHeadM(head, flow));
      }
      head += laws.get(i + 1).headLossAt(flow);
    }
    return strongest;
  }

  private static boolean isDrawnDown(PointState state) {
    return state.point() instanceof Chamber chamber
        && state.headM().isPresent()
        && state.headM().getAsDouble() < chamber.intakeM();
  }

  /** Whether nothing in the pump's own line holds the flow back: a shut valve, a stopped pump. */
  private static boolean restOfLineLetsThrough(Network network, PumpPlace place, double flow) {
    int index = -1;
    for (HeadLaw law : network.lawsOf(network.line(place.line()))) {
      if (index != place.partIndex() && flow > law.greatestFlow()) {
        return false;
      }
      index++;
    }
    return true;
  }

  private static double restOfLineLoss(Network network, PumpPlace place, double flow) {
    Line line = network.line(place.line());
    double sum = 0;
    int index = -1;
    for (HeadLaw law : network.lawsOf(line)) {
      sum += index == place.partIndex() ? 0 : law.headLossAt(flow);
      index++;
    }
    return sum;
  }

  /**
   * The greatest flow up to a limit that the pump could draw and the network carry, m³/s: what a
   * skimmer passes, say.
   *
   * @param limitM3PerS flow to look up to, m³/s
   */
  public static double greatestFlowM3PerS(Network network, PumpPlace place, double limitM3PerS) {
    if (at(network, place, limitM3PerS).isPresent()) {
      return limitM3PerS;
    }
    double low = 0;
    double high = limitM3PerS;
    while (high - low > RELATIVE_ACCURACY * limitM3PerS) {
      double middle = (low + high) / 2;
      if (at(network, place, middle).isPresent()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
