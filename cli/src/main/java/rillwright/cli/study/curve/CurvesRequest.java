package rillwright.cli.study.curve;

import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.curves.trace.SystemCurve;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.duty.Duty;
import rillwright.solver.study.duty.DutyFinder;

/**
 * What is the curve of a pump, and what the system curve?
 *
 * @param place where it stands or is to stand
 */
public record CurvesRequest(PumpPlace place) implements Request<Curves> {
  /** Flow drawn where neither a pump nor a target tells how far, m³/s; about 8000 gph. */
  private static final double USUAL_FLOW_M3_PER_S = 8e-3;

  private static final double ROOM = 1.12;

  /**
   * {@inheritDoc}
   *
   * @throws rillwright.solver.steady.NoBalance if draws cannot be met whatever pump stands there
   */
  @Override
  public Curves answer(Project project, Progress progress) {
    Network network = project.network();
    PumpsChosen.require(network, place);
    place.requireDrawsMet(network);
    Part part = network.line(place.line()).parts().get(place.partIndex());
    Optional<Pump> pump = part instanceof Pump chosen ? Optional.of(chosen) : Optional.empty();
    Optional<SteadyState> state = pump.map(chosen -> SteadyStateFinder.find(network));
    boolean targeted =
        network.points().stream().anyMatch(point -> point.targetM3PerS().isPresent());
    Optional<Duty> duty =
        pump.isEmpty() && targeted
            ? Optional.of(DutyFinder.find(network, place))
            : Optional.empty();
    double reach =
        Math.max(
            pump.map(Pump::set).map(PumpSet::publishedRangeM3PerS).orElse(0.0),
            Math.max(
                state.map(s -> s.line(place.line()).flowM3PerS()).orElse(0.0),
                duty.flatMap(Duty::asTheyStand).map(d -> 1.4 * d.flowM3PerS()).orElse(0.0)));
    double to = ROOM * (reach > 0 ? reach : USUAL_FLOW_M3_PER_S);
    return new Curves(
        Job.of(project), place, SystemCurve.trace(network, place, to), pump, state, duty, to);
  }
}
