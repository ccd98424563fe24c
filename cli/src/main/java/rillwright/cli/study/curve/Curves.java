package rillwright.cli.study.curve;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.curves.trace.SystemCurve;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.study.duty.Duty;

/**
 * The curves at a pump's place.
 *
 * @param job that they are about
 * @param place where the pump stands
 * @param system head that everything else needs
 * @param pump the pump there; empty if it is still to be chosen
 * @param state what flows where with it; empty likewise
 * @param duty what it must make; empty if a pump is chosen or there is no target
 * @param toFlowM3PerS flow to which the curves are drawn, m³/s
 */
public record Curves(
    Job job,
    PumpPlace place,
    SystemCurve system,
    Optional<Pump> pump,
    Optional<SteadyState> state,
    Optional<Duty> duty,
    double toFlowM3PerS)
    implements Answer {

  /** The pump's flow, m³/s; empty if it is still to be chosen. */
  public OptionalDouble operatingFlowM3PerS() {
    return state
        .map(s -> OptionalDouble.of(s.line(place.line()).flowM3PerS()))
        .orElse(OptionalDouble.empty());
  }
}
