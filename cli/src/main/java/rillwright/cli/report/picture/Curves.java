package rillwright.cli.report.picture;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.curves.trace.SystemCurve;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.duty.Duty;
import rillwright.solver.study.duty.DutyFinder;

/**
 * The curves at a pump's place.
 *
 * @param place where the pump stands
 * @param system head that everything else needs
 * @param pump the pump there; empty if it is still to be chosen
 * @param state what flows where with it; empty likewise
 * @param duty what it must make; empty if a pump is chosen or nothing is wished
 * @param toFlowM3PerS flow to which the curves are drawn, m³/s
 */
public record Curves(
    PumpPlace place,
    SystemCurve system,
    Optional<Pump> pump,
    Optional<SteadyState> state,
    Optional<Duty> duty,
    double toFlowM3PerS) {

  /** Flow drawn where neither a pump nor a wish tells how far, m³/s; about 8000 gph. */
  private static final double USUAL_FLOW_M3_PER_S = 8e-3;

  private static final double ROOM = 1.12;

  /** Traces the curves at a place of a network whose other pumps are chosen. */
  public static Curves at(Network network, PumpPlace place) {
    Part part = network.line(place.line()).parts().get(place.partIndex());
    Optional<Pump> pump = part instanceof Pump chosen ? Optional.of(chosen) : Optional.empty();
    Optional<SteadyState> state = pump.map(chosen -> SteadyStateFinder.find(network));
    boolean wished = network.points().stream().anyMatch(point -> point.wantM3PerS().isPresent());
    Optional<Duty> duty =
        pump.isEmpty() && wished ? Optional.of(DutyFinder.find(network, place)) : Optional.empty();
    double reach =
        Math.max(
            pump.map(Pump::set).map(PumpSet::publishedRangeM3PerS).orElse(0.0),
            Math.max(
                state.map(s -> s.line(place.line()).flowM3PerS()).orElse(0.0),
                duty.flatMap(Duty::asTheyStand).map(d -> 1.4 * d.flowM3PerS()).orElse(0.0)));
    double to = ROOM * (reach > 0 ? reach : USUAL_FLOW_M3_PER_S);
    return new Curves(place, SystemCurve.trace(network, place, to), pump, state, duty, to);
  }

  /** The pump's flow, m³/s; empty if it is still to be chosen. */
  public OptionalDouble operatingFlowM3PerS() {
    return state
        .map(s -> OptionalDouble.of(s.line(place.line()).flowM3PerS()))
        .orElse(OptionalDouble.empty());
  }
}
