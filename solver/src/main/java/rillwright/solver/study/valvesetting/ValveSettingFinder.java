package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Network;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.Targets;
import rillwright.solver.pumping.WaterWays;
import rillwright.solver.steady.SteadyStateFinder;

/** Finds {@link ValveSettings}. */
public final class ValveSettingFinder {
  /** What the falls are to get. */
  public enum Aim {
    /** The largest share of their targets. */
    LARGEST_SHARE,
    /** Exactly their targets, where the pump is strong enough; else the largest share. */
    TARGET
  }

  private final Network network;
  private final List<ValvePlace> places;
  private final Aim aim;
  private final Targets targets;

  private ValveSettingFinder(Network network, List<ValvePlace> places, Aim aim) {
    this.network = network;
    this.places = places;
    this.aim = aim;
    this.targets = Targets.of(network);
  }

  /**
   * The settings of some valves.
   *
   * @param places of the valves that may be set, one or more; all others stay as they stand
   * @throws IllegalArgumentException if no fall or outlet has a target, or there is no valve
   * @throws rillwright.solver.steady.NoBalance if the network has no balanced state
   */
  public static ValveSettings find(Network network, List<ValvePlace> places, Aim aim) {
    ValveSettingFinder finder = new ValveSettingFinder(network, places, aim);
    if (finder.targets.falls().isEmpty() || places.isEmpty()) {
      throw new IllegalArgumentException("there must be a target and a valve");
    }
    return finder.run();
  }

  private ValveSettings run() {
    Network open = network;
    for (ValvePlace place : places) {
      open = place.withLoss(open, place.in(network).loss().wideOpen());
    }
    WaterWays ways = new WaterWays(SteadyStateFinder.find(open));
    List<ValvePlace> useful = new ArrayList<>();
    for (ValvePlace place : places) {
      if (ways.reached(place.line(), targets.falls()).isEmpty()) {
        open = place.withLoss(open, place.in(network).loss());
      } else {
        useful.add(place);
      }
    }
    List<ValvePlace> coarse = new ArrayList<>();
    SettingAttempt attempt = new SettingAttempt(open, targets, aim, useful, coarse);
    while (!attempt.tooCoarse().isEmpty()) {
      ValvePlace first = attempt.tooCoarse().get(0);
      Valve.Setpoint loss = first.in(open).loss();
      open = first.withLoss(open, loss.closedTo(loss.greatestLossCoefficient()));
      useful.remove(first);
      coarse.add(first);
      attempt = new SettingAttempt(open, targets, aim, useful, coarse);
    }
    return attempt.describe(places);
  }
}
