package rillwright.solver.study.valvesetting;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * How much the travel of a valve changes the flow through it: the slope of its loss by its travel
 * times that of the flow by the loss, and where the state has no such slope, or the valve stands
 * next to shut, by balances with it a little wider and closer.
 */
final class Sensitivity {
  /** The slope is taken between this many degrees on either side. */
  private static final double HALF_WIDTH_DEGREES = 0.25;

  private static final double DEGREES = 90;
  private static final double STEP = HALF_WIDTH_DEGREES / DEGREES;

  private final Network set;
  private final SteadyState state;
  private final Optional<ToDoubleFunction<LineName>> flowByHead;

  /**
   * Sensitivity in a network.
   *
   * @param state with the valves as they are to be set
   */
  Sensitivity(SteadyState state) {
    this.set = state.network();
    this.state = state;
    this.flowByHead = state.flowByHead();
  }

  /**
   * By how much less would run for all of its travel at this slope, m³/s; empty where only its loss
   * is known.
   */
  OptionalDouble of(ValvePlace place) {
    if (!(place.in(set).loss() instanceof Valve.Opening opening)) {
      return OptionalDouble.empty();
    }
    double wider = Math.min(1, opening.open() + STEP);
    double closer = Math.max(Double.MIN_NORMAL, opening.open() - STEP);
    boolean hasSlope = flowByHead.isPresent() && opening.open() > 2 * STEP;
    return hasSlope
        ? OptionalDouble.of(bySlope(place, opening, wider, closer, flowByHead.get()))
        : byBalances(place, opening, wider, closer);
  }

  private double bySlope(
      ValvePlace place,
      Valve.Opening opening,
      double wider,
      double closer,
      ToDoubleFunction<LineName> less) {
    double coefficient = opening.at(closer).lossCoefficient() - opening.at(wider).lossCoefficient();
    double flow = state.line(place.line()).flowM3PerS();
    double head = coefficient * place.in(set).inside().velocityHeadAt(flow);
    return head / (wider - closer) * less.applyAsDouble(place.line());
  }

  private OptionalDouble byBalances(
      ValvePlace place, Valve.Opening opening, double wider, double closer) {
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
