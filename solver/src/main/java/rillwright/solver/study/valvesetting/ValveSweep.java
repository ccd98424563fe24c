package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * What every fall gets while one valve is moved and the others stay as they are set.
 *
 * @param valve that is moved
 * @param steps from wide open towards shut
 */
public record ValveSweep(SetValve valve, List<Step> steps) {
  private static final int STEPS = 40;

  /** How far beyond its setting a valve is moved, in settings; and a share of its travel more. */
  private static final double BEYOND = 1.6;

  private static final double MORE_TRAVEL = 0.12;
  private static final double MOST_TRAVEL = 0.97;

  /** A loss coefficient that shows what closing does, of a valve that is wide open. */
  private static final double LEAST_FAR_K = 10;

  /** Stands for a valve that is to be shut, which has no K to sweep to. */
  private static final double NEARLY_SHUT_K = 1000;

  public ValveSweep {
    steps = List.copyOf(steps);
  }

  /**
   * A place of the valve.
   *
   * @param loss how it stands
   * @param shares of each fall's target, in the order of the network
   */
  public record Step(Valve.Setpoint loss, Map<PointName, Double> shares) {}

  /** The sweep of one of the valves; steps without a balanced state are left out. */
  public static ValveSweep of(ValveSettings settings, SetValve set) {
    Network network = settings.state().network();
    Targets targets = Targets.of(network);
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      Valve.Setpoint loss = at(settings, set, (double) i / STEPS);
      try {
        SteadyState state = SteadyStateFinder.find(set.place().withLoss(network, loss));
        Map<PointName, Double> shares = new LinkedHashMap<>();
        targets.falls().forEach(fall -> shares.put(fall, targets.shareAt(fall, state)));
        steps.add(new Step(loss, shares));
      } catch (NoBalance drawsGoShort) {
        break;
      }
    }
    return new ValveSweep(set, steps);
  }

  private static Valve.Setpoint at(ValveSettings settings, SetValve set, double share) {
    if (set.valve().loss() instanceof Valve.Opening opening) {
      double closed = Math.min(MOST_TRAVEL, BEYOND * (1 - opening.open()) + MORE_TRAVEL);
      return opening.at(1 - share * closed);
    }
    double open = set.place().in(settings.wideOpen().network()).loss().lossCoefficient();
    double far = Math.max(LEAST_FAR_K, 2 * BEYOND * set.lossCoefficient().orElse(NEARLY_SHUT_K));
    return new Valve.GivenLoss(open + share * (far - open));
  }
}
