package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.solver.network.Network;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.HeldToTarget;
import rillwright.solver.pumping.Targets;
import rillwright.solver.pumping.WaterWays;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
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

  /**
   * What valves so set give, and no more than that.
   *
   * @param state with the valves so set
   * @param targetFraction the multiple of its target that every fall gets at least
   */
  public record Brief(SteadyState state, double targetFraction) {}

  /**
   * So many valves that close too coarsely are looked for one by one, the rest ever more at once.
   */
  private static final int ONE_BY_ONE = 8;

  private static final int MOST_DOUBLINGS = 20;

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
    return attempt(network, places, aim).describe(places);
  }

  /**
   * The same without what it means for the crew: for those who compare many.
   *
   * @throws IllegalArgumentException if no fall or outlet has a target, or there is no valve
   * @throws rillwright.solver.steady.NoBalance if the network has no balanced state
   */
  public static Brief findBriefly(Network network, List<ValvePlace> places, Aim aim) {
    return attempt(network, places, aim).brief();
  }

  /** The same as far as so much work goes. */
  static ValveSettings find(Network network, List<ValvePlace> places, Aim aim, SearchLeft work) {
    return attempt(network, places, aim, work).describe(places);
  }

  private static SettingAttempt attempt(Network network, List<ValvePlace> places, Aim aim) {
    return attempt(network, places, aim, new SearchLeft(network));
  }

  private static SettingAttempt attempt(
      Network network, List<ValvePlace> places, Aim aim, SearchLeft work) {
    ValveSettingFinder finder = new ValveSettingFinder(network, places, aim);
    if (finder.targets.falls().isEmpty() || places.isEmpty()) {
      throw new IllegalArgumentException("there must be a target and a valve");
    }
    return finder.run(work);
  }

  private SettingAttempt run(SearchLeft work) {
    Map<ValvePlace, Valve.Setpoint> opened = new LinkedHashMap<>();
    places.forEach(place -> opened.put(place, place.in(network).loss().wideOpen()));
    Network open = ValvePlace.withLosses(network, opened);
    SteadyState wideState = SteadyStateFinder.find(open);
    WaterWays ways = ways(wideState, targets);
    List<ValvePlace> useful = new ArrayList<>();
    Map<ValvePlace, Valve.Setpoint> left = new LinkedHashMap<>();
    for (ValvePlace place : places) {
      if (ways.reached(place.line(), targets.falls()).isEmpty()) {
        left.put(place, place.in(network).loss());
      } else {
        useful.add(place);
      }
    }
    open = ValvePlace.withLosses(open, left);
    List<ValvePlace> coarse = new ArrayList<>();
    SteadyState openState =
        useful.size() == places.size() ? wideState : SteadyStateFinder.find(open);
    SettingAttempt attempt = new SettingAttempt(openState, targets, aim, useful, coarse, work);
    for (int round = 0; !attempt.tooCoarse().isEmpty(); round++) {
      List<ValvePlace> found = attempt.tooCoarse();
      int atOnce = 1 << Math.min(MOST_DOUBLINGS, Math.max(0, round - ONE_BY_ONE));
      Map<ValvePlace, Valve.Setpoint> closed = new LinkedHashMap<>();
      for (ValvePlace place : found.subList(0, Math.min(atOnce, found.size()))) {
        Valve.Setpoint loss = place.in(open).loss();
        closed.put(place, loss.closedTo(loss.greatestLossCoefficient()));
      }
      open = ValvePlace.withLosses(open, closed);
      useful.removeAll(closed.keySet());
      coarse.addAll(closed.keySet());
      SteadyState state = SteadyStateFinder.find(open);
      attempt = new SettingAttempt(state, targets, aim, useful, coarse, work);
    }
    return attempt;
  }

  /**
   * The ways of the water with valves wide open; but where some fall gets nothing then, or runs
   * backwards, and more of them get water if none gets more than its target, the ways of that.
   */
  static WaterWays ways(SteadyState wide, Targets targets) {
    SteadyState state = wide;
    if (running(wide, targets) < targets.falls().size()) {
      try {
        Network held = HeldToTarget.of(wide.network(), targets, targets.falls());
        SteadyState shared = SteadyStateFinder.find(held, wide);
        state = running(shared, targets) > running(wide, targets) ? shared : wide;
      } catch (NoBalance drawsGoShort) {
        state = wide;
      }
    }
    return new WaterWays(state);
  }

  private static long running(SteadyState state, Targets targets) {
    return targets.falls().stream().filter(fall -> state.point(fall).outflowM3PerS() > 0).count();
  }
}
