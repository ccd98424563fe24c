package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.Targets;
import rillwright.solver.pumping.WaterWays;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.valvesetting.SetValve.Role;
import rillwright.solver.study.valvesetting.Throttling.Throttled;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;

/** The settings as far as valves can be closed so far as they would have to be. */
final class SettingAttempt {
  /** How much more than the share a fall must get to be called favoured. */
  private static final double NOTICEABLE = 1e-6;

  private final Network open;
  private final Targets targets;
  private final List<ValvePlace> coarse;
  private final SearchLeft work;
  private final Throttling throttling;
  private final WaterWays ways;
  private final List<Throttle> throttles;
  private final ShareSearch.Largest largest;
  private final boolean exactly;
  private final Map<ValvePlace, Double> losses = new LinkedHashMap<>();

  /**
   * An attempt.
   *
   * @param wideOpen with all these valves as wide open as they are to be
   * @param useful valves that feed a fall with a target and can be closed further
   * @param coarse valves that are closed as far as they go short of shut
   */
  SettingAttempt(
      SteadyState wideOpen,
      Targets targets,
      Aim aim,
      List<ValvePlace> useful,
      List<ValvePlace> coarse,
      SearchLeft work) {
    this.work = work;
    this.open = wideOpen.network();
    this.targets = targets;
    this.coarse = List.copyOf(coarse);
    this.throttling = new Throttling(wideOpen, targets, work);
    this.ways = ValveSettingFinder.ways(wideOpen, targets);
    this.throttles = Throttle.assign(ways, useful, targets.falls());
    ShareSearch search = new ShareSearch(throttling, targets, throttles, work);
    this.largest = search.find();
    if (largest.targetFraction() <= 0) {
      exactly = false;
      return; // nothing closed would help: no water reaches the governing fall
    }
    // a search that was cut short may stand at a share that was never tried
    exactly = aim == Aim.TARGET && largest.targetFraction() >= 1 && !work.isSpent();
    List<Throttle> closed = exactly ? forTheTarget(useful) : search.without(largest.governing());
    Throttled throttled = throttling.at(exactly ? 1 : largest.targetFraction(), closed);
    throttled
        .limitM3PerS()
        .keySet()
        .forEach(place -> losses.put(place, throttling.lossCoefficient(throttled, place)));
  }

  /**
   * All throttles; but where one valve feeds all falls it takes what is too much for all, and the
   * way from it to the governing fall stays wide open.
   */
  private List<Throttle> forTheTarget(List<ValvePlace> useful) {
    Optional<ValvePlace> common =
        useful.stream()
            .filter(place -> ways.reached(place.line(), targets.falls()).equals(targets.falls()))
            .reduce((one, later) -> later);
    boolean doesNothingYet =
        common.isPresent() && throttles.stream().noneMatch(t -> t.valves().contains(common.get()));
    if (!doesNothingYet) {
      return throttles;
    }
    Throttled all = throttling.at(1, throttles);
    Throttle governing =
        throttles.stream().min(Comparator.comparingDouble(t -> headTaken(all, t))).orElseThrow();
    List<Throttle> closed = new ArrayList<>(throttles);
    closed.remove(governing);
    closed.add(new Throttle(List.of(common.get()), governing.falls()));
    return closed;
  }

  /** The least head that a valve of a throttle takes more than wide open where water runs, m. */
  private double headTaken(Throttled throttled, Throttle throttle) {
    double least = Double.POSITIVE_INFINITY;
    for (ValvePlace place : throttle.valves()) {
      Valve valve = place.in(open);
      double flow = throttled.state().line(place.line()).flowM3PerS();
      if (flow != 0) {
        double more = throttling.lossCoefficient(throttled, place) - valve.loss().lossCoefficient();
        least = Math.min(least, more * valve.inside().velocityHeadAt(flow));
      }
    }
    return least;
  }

  /** The valves that cannot be closed so far, but by shutting them. */
  List<ValvePlace> tooCoarse() {
    return losses.keySet().stream()
        .filter(place -> losses.get(place) > place.in(open).loss().greatestLossCoefficient())
        .toList();
  }

  private SteadyState set() {
    Map<ValvePlace, Valve.Setpoint> set = new LinkedHashMap<>();
    losses.forEach(
        (place, loss) -> {
          Valve.Setpoint wide = place.in(open).loss();
          set.put(place, loss > wide.lossCoefficient() ? wide.closedTo(loss) : wide);
        });
    return SteadyStateFinder.find(ValvePlace.withLosses(open, set), throttling.wideOpen());
  }

  private double leastShare(SteadyState state) {
    return targets.shareAt(targets.worstIn(state), state);
  }

  ValveSettingFinder.Brief brief() {
    SteadyState state = set();
    return new ValveSettingFinder.Brief(state, leastShare(state));
  }

  /** The settings of all places. */
  ValveSettings describe(List<ValvePlace> places) {
    SteadyState state = set();
    Network set = state.network();
    double share = leastShare(state);
    Set<PointName> favoured = new LinkedHashSet<>(targets.falls());
    favoured.removeIf(
        fall -> targets.shareAt(fall, state) <= share + NOTICEABLE * Math.max(1, share));
    Sensitivity sensitivity = new Sensitivity(state);
    List<SetValve> valves = new ArrayList<>();
    for (ValvePlace place : places) {
      valves.add(new SetValve(place, place.in(set), role(place, set), sensitivity.of(place)));
    }
    boolean cutShort = work.wasCutShort();
    OptionalDouble pumpShort = OptionalDouble.of(0);
    boolean headIsKnown = !state.missesATarget() || !cutShort;
    if (state.missesATarget() && !cutShort) {
      pumpShort =
          new PumpShortfall(
                  throttling.wideOpen(), targets, throttles, heldOthers(favoured, valves), work)
              .find();
      headIsKnown = !work.wasCutShort();
    }
    boolean opensGoverningWay =
        valves.stream()
            .filter(valve -> valve.role() == Role.WIDE_OPEN)
            .anyMatch(
                valve ->
                    !ways.reached(valve.place().line(), Set.of(largest.governing())).isEmpty());
    return new ValveSettings(
        share,
        largest.governing(),
        state,
        throttling.wideOpen(),
        valves,
        order(places),
        favoured,
        headIsKnown ? pumpShort : OptionalDouble.empty(),
        headIsKnown,
        exactly,
        opensGoverningWay,
        cutShort);
  }

  private HeldOthers heldOthers(Set<PointName> favoured, List<SetValve> valves) {
    return new HeldOthers(
        targets,
        favoured,
        valves.stream()
            .filter(valve -> valve.role() == Role.LEFT_ALONE)
            .map(SetValve::place)
            .toList());
  }

  private Role role(ValvePlace place, Network set) {
    if (coarse.contains(place)) {
      return Role.TOO_COARSE;
    }
    boolean feeds = !ways.reached(place.line(), targets.falls()).isEmpty();
    double wide = place.in(open).loss().lossCoefficient();
    return !feeds
        ? Role.LEFT_ALONE
        : place.in(set).loss().lossCoefficient() > wide ? Role.THROTTLED : Role.WIDE_OPEN;
  }

  /** First the valves whose falls would get most with all wide open; last those left open. */
  private List<LineName> order(List<ValvePlace> places) {
    SteadyState wide = throttling.wideOpen();
    Map<ValvePlace, Double> share = new LinkedHashMap<>();
    for (ValvePlace place : losses.keySet()) {
      Set<PointName> fed = ways.reached(place.line(), targets.falls());
      share.put(place, targets.shareAt(targets.worstIn(wide, fed), wide));
    }
    List<ValvePlace> closed = new ArrayList<>(losses.keySet());
    closed.sort(Comparator.comparingDouble((ValvePlace place) -> -share.get(place)));
    Set<LineName> order = new LinkedHashSet<>();
    coarse.forEach(place -> order.add(place.line()));
    closed.forEach(place -> order.add(place.line()));
    places.forEach(place -> order.add(place.line()));
    return List.copyOf(order);
  }
}
