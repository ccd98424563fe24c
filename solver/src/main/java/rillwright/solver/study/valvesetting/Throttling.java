package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.LimitedLaw;
import rillwright.solver.law.curve.FallingRoot;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * A network whose throttles let no more through than a share of what their falls target: each valve
 * stands for one that closes by itself at a limit of its flow.
 */
final class Throttling {
  private static final int MOST_ROUNDS = 30;

  /** Rounds in which a limit is corrected as if falls shared as they do; it mostly is enough. */
  private static final int QUICK_ROUNDS = 4;

  /** So often a correction after which a draw goes short is halved. */
  private static final int MOST_HALVES = 5;

  private static final double GREATEST_STEP = 4;
  private static final double SHARE_TOLERANCE = 1e-12;
  private static final double AT_THE_LIMIT = 1 - 1e-9;

  private final Network open;
  private final Targets targets;
  private final SteadyState wideOpen;
  private final SearchLeft work;

  /** The last state that was found: the next one is near it. */
  private SteadyState last;

  /**
   * Throttling in a network.
   *
   * @param wideOpen the network with the valves wide open
   */
  Throttling(SteadyState wideOpen, Targets targets, SearchLeft work) {
    this(wideOpen.network(), targets, wideOpen, work);
  }

  /**
   * The same with a state that is like its own.
   *
   * @param like the steady state of a network like it
   */
  static Throttling near(Network open, Targets targets, SteadyState like, SearchLeft work) {
    return new Throttling(open, targets, SteadyStateFinder.find(open, like), work);
  }

  private Throttling(Network open, Targets targets, SteadyState wideOpen, SearchLeft work) {
    this.work = work;
    this.open = open;
    this.targets = targets;
    this.wideOpen = wideOpen;
    this.last = wideOpen;
  }

  /** The state with all valves wide open. */
  SteadyState wideOpen() {
    return wideOpen;
  }

  /**
   * A throttled network.
   *
   * @param state of it
   * @param limitM3PerS the greatest flow that each valve lets through
   */
  record Throttled(SteadyState state, Map<ValvePlace, Double> limitM3PerS) {}

  /**
   * The network with some throttles closed so far that none of their falls gets more than it must
   * for the poorest of them to get a share.
   *
   * @throws rillwright.solver.steady.NoBalance if draws cannot be met then
   */
  Throttled at(double share, Collection<Throttle> throttles) {
    Map<ValvePlace, Double> limits = new LinkedHashMap<>();
    Map<ValvePlace, Double> wide = new LinkedHashMap<>();
    for (Throttle throttle : throttles) {
      for (ValvePlace valve : throttle.valves()) {
        double flow = flow(wideOpen, valve);
        wide.put(valve, flow);
        limits.put(valve, Math.max(0, flow + correction(wideOpen, throttle, share)));
      }
    }
    SteadyState state = solve(limits, wide);
    boolean settled = false;
    for (int round = 0; round < MOST_ROUNDS && !settled && !work.isSpent(); round++) {
      settled = true;
      Map<ValvePlace, Double> before = Map.copyOf(limits);
      for (Throttle throttle : throttles) {
        double error = poorestShare(state, throttle) - share;
        boolean tooMuch = error > SHARE_TOLERANCE * share;
        boolean tooLittle = error < -SHARE_TOLERANCE * share && holdsBack(state, throttle, limits);
        if (tooMuch || tooLittle) {
          settled = false;
          if (round < QUICK_ROUNDS) {
            double correction = correction(state, throttle, share);
            throttle
                .valves()
                .forEach(valve -> limits.merge(valve, correction, (a, b) -> Math.max(0, a + b)));
          } else {
            limits.putAll(searched(limits, throttle, share));
          }
        }
      }
      settled |= limits.equals(before); // a valve that is shut can do no more
      state = settled ? state : solve(limits, before);
    }
    return new Throttled(state, limits);
  }

  /** The limits of a throttle, the others being as they are: where falls share unevenly. */
  private Map<ValvePlace, Double> searched(
      Map<ValvePlace, Double> limits, Throttle throttle, double share) {
    double factor =
        FallingRoot.find(
            scale -> lacking(scaled(limits, throttle, scale), throttle, share),
            0,
            GREATEST_STEP,
            SHARE_TOLERANCE * share / 4);
    return scaled(limits, throttle, factor);
  }

  /** What the poorest fall lacks of a share; all of it where a draw goes short. */
  private double lacking(Map<ValvePlace, Double> limits, Throttle throttle, double share) {
    if (work.isSpent()) {
      return 0;
    }
    try {
      return share - poorestShare(solve(limits), throttle);
    } catch (NoBalance drawsGoShort) {
      return share;
    }
  }

  private static Map<ValvePlace, Double> scaled(
      Map<ValvePlace, Double> limits, Throttle throttle, double factor) {
    Map<ValvePlace, Double> scaled = new LinkedHashMap<>(limits);
    throttle.valves().forEach(valve -> scaled.put(valve, factor * limits.get(valve)));
    return scaled;
  }

  private double poorestShare(SteadyState state, Throttle throttle) {
    return targets.shareAt(targets.worstIn(state, throttle.falls()), state);
  }

  private boolean holdsBack(SteadyState state, Throttle throttle, Map<ValvePlace, Double> limits) {
    return throttle.valves().stream()
        .anyMatch(valve -> flow(state, valve) >= AT_THE_LIMIT * limits.get(valve));
  }

  /** What each valve of a throttle should let through more, m³/s, if its falls share as they do. */
  private double correction(SteadyState state, Throttle throttle, double share) {
    PointName poorest = targets.worstIn(state, throttle.falls());
    double lacks = share * targets.at(poorest) - state.point(poorest).outflowM3PerS();
    double gets = state.point(poorest).outflowM3PerS();
    double all = throttle.falls().stream().mapToDouble(f -> state.point(f).outflowM3PerS()).sum();
    double partOfAll = gets > 0 ? gets / all : 1;
    return lacks / partOfAll / throttle.valves().size();
  }

  /**
   * The state with limits; where a draw goes short with them, they are taken back half way to those
   * with which it did not.
   */
  private SteadyState solve(Map<ValvePlace, Double> limits, Map<ValvePlace, Double> before) {
    for (int halves = 0; halves < MOST_HALVES; halves++) {
      try {
        return solve(limits);
      } catch (NoBalance drawsGoShort) {
        limits.replaceAll((valve, limit) -> (limit + before.get(valve)) / 2);
      }
    }
    return solve(limits);
  }

  private SteadyState solve(Map<ValvePlace, Double> limits) {
    Map<LineName, Line> limited = new LinkedHashMap<>();
    for (Map.Entry<ValvePlace, Double> limit : limits.entrySet()) {
      ValvePlace place = limit.getKey();
      Valve valve = place.in(open);
      HeadLaw law = new VelocityHeadLoss(valve.loss().lossCoefficient(), valve.inside());
      Loss limiting = new Loss(new LimitedLaw(law, limit.getValue()), Optional.of(valve.inside()));
      Line line = limited.getOrDefault(place.line(), open.line(place.line()));
      limited.put(place.line(), line.withPart(place.partIndex(), limiting));
    }
    try {
      last = SteadyStateFinder.find(open.withLines(limited.values()), last);
    } catch (NoBalance drawsGoShort) {
      work.spendInVain(open);
      throw drawsGoShort;
    }
    work.spend(last);
    return last;
  }

  private static double flow(SteadyState state, ValvePlace valve) {
    return Math.abs(state.line(valve.line()).flowM3PerS());
  }

  /** The loss coefficient that a valve has to have for what it takes in a throttled network. */
  double lossCoefficient(Throttled throttled, ValvePlace place) {
    Valve valve = place.in(open);
    double wideOpenK = valve.loss().lossCoefficient();
    LineState line = throttled.state().line(place.line());
    double flow = line.flowM3PerS();
    if (flow == 0) {
      return Double.POSITIVE_INFINITY;
    }
    if (Math.abs(flow) < AT_THE_LIMIT * throttled.limitM3PerS().get(place)
        || line.headLossM().isEmpty()) {
      return wideOpenK;
    }
    double rest = 0;
    Line written = open.line(place.line());
    List<HeadLaw> laws = new ArrayList<>(open.lawsOf(written));
    laws.remove(place.partIndex() + 1);
    for (HeadLaw law : laws) {
      rest += law.headLossAt(flow);
    }
    double taken = Math.signum(flow) * (line.headLossM().getAsDouble() - rest);
    return Math.max(wideOpenK, taken / valve.inside().velocityHeadAt(flow));
  }
}
