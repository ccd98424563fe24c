package rillwright.solver.study.valvesetting;

import java.util.OptionalDouble;
import rillwright.solver.network.Network;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** How much the travel of a valve changes the flow through it. */
final class Sensitivity {
  /** The slope is taken between this many degrees on either side. */
  private static final double HALF_WIDTH_DEGREES = 0.25;

  private static final double DEGREES = 90;

  private final Network set;
  private final SteadyState state;

  /**
   * Sensitivity in a network.
   *
   * @param state with the valves as they are to be set
   */
  Sensitivity(SteadyState state) {
    this.set = state.network();
    this.state = state;
  }

  /**
   * By how much less would run for all of its travel at this slope, m³/s; empty where only its loss
   * is known.
   */
  OptionalDouble of(ValvePlace place) {
    if (!(place.in(set).loss() instanceof Valve.Opening opening)) {
      return OptionalDouble.empty();
    }
    double step = HALF_WIDTH_DEGREES / DEGREES;
    double wider = Math.min(1, opening.open() + step);
    double closer = Math.max(Double.MIN_NORMAL, opening.open() - step);
    try {
      double more = flowAt(place, opening, wider);
      double less = flowAt(place, opening, closer);
      return OptionalDouble.of((more - less) / (wider - closer));
    } catch (NoBalance drawsGoShort) {
      return OptionalDouble.empty();
    }
  }

  private double flowAt(ValvePlace place, Valve.Opening opening, double open) {
    Valve turned = place.in(set).withSetpoint(opening.at(open));
    Network changed = set.withPart(place.line(), place.partIndex(), turned);
    return Math.abs(SteadyStateFinder.find(changed, state).line(place.line()).flowM3PerS());
  }
}
