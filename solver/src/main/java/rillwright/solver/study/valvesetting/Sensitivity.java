package rillwright.solver.study.valvesetting;

import java.util.OptionalDouble;
import rillwright.solver.network.Network;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyStateFinder;

/** How much a degree of a handle changes the flow through its valve. */
final class Sensitivity {
  /** The slope is taken between this many degrees on either side. */
  private static final double HALF_WIDTH_DEGREES = 0.25;

  private static final double DEGREES = 90;

  private final Network set;

  /**
   * Sensitivity in a network.
   *
   * @param set with the valves as they are to be set
   */
  Sensitivity(Network set) {
    this.set = set;
  }

  /** By how much less runs for a degree further shut, m³/s; empty where no handle turns. */
  OptionalDouble of(ValvePlace place) {
    if (place.in(set).loss().degreesFromOpen().isEmpty()
        || !(place.in(set).loss() instanceof Valve.Opening opening)) {
      return OptionalDouble.empty();
    }
    double step = HALF_WIDTH_DEGREES / DEGREES;
    double wider = Math.min(1, opening.open() + step);
    double closer = Math.max(Double.MIN_NORMAL, opening.open() - step);
    try {
      double more = flowAt(place, opening, wider);
      double less = flowAt(place, opening, closer);
      return OptionalDouble.of((more - less) / ((wider - closer) * DEGREES));
    } catch (NoBalance drawsGoShort) {
      return OptionalDouble.empty();
    }
  }

  private double flowAt(ValvePlace place, Valve.Opening opening, double open) {
    Valve turned = place.in(set).withSetpoint(new Valve.Opening(opening.travel(), open));
    Network changed = set.withPart(place.line(), place.partIndex(), turned);
    return Math.abs(SteadyStateFinder.find(changed).line(place.line()).flowM3PerS());
  }
}
