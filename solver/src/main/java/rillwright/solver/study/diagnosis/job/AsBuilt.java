package rillwright.solver.study.diagnosis.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * The job as it was built.
 *
 * @param network its network
 * @param state what flows in it
 * @param circuits of its lines
 * @param facts what is known of it besides
 */
public record AsBuilt(Network network, SteadyState state, Circuits circuits, JobFacts facts) {

  /**
   * A job with its steady state.
   *
   * @throws rillwright.solver.steady.NoBalance if it has none
   */
  public static AsBuilt of(Network network) {
    return of(network, JobFacts.NONE);
  }

  /** The same with what is known of it besides. */
  public static AsBuilt of(Network network, JobFacts facts) {
    SteadyState state = SteadyStateFinder.find(network);
    return new AsBuilt(network, state, Circuits.in(state), facts);
  }

  /**
   * What the pumps of a line's circuit move together, m³/s: of all lines that water joins to it
   * without an open basin between. Without a pump, what flows in the line itself.
   */
  public double pumpFlowM3PerS(LineName line) {
    double sum = circuits.pumpedM3PerS().get(line);
    return sum > 0 ? sum : Math.abs(state.line(line).flowM3PerS());
  }

  /** The same of a point's circuit. */
  public double pumpFlowM3PerS(PointName point) {
    return Optional.ofNullable(circuits.firstLines().get(point))
        .map(this::pumpFlowM3PerS)
        .orElse(0.0);
  }

  /**
   * Whether nothing flows where one would see it: over any fall; without falls, out of any outlet;
   * without either, in any line.
   */
  public boolean isDry() {
    List<PointState> seen = pointsOfKind(Fall.class);
    if (seen.isEmpty()) {
      seen = pointsOfKind(Outlet.class);
    }
    return seen.isEmpty()
        ? state.lines().stream().allMatch(line -> line.flowM3PerS() == 0)
        : seen.stream().allMatch(point -> point.outflowM3PerS() <= 0);
  }

  private List<PointState> pointsOfKind(Class<? extends Point> kind) {
    return state.points().stream().filter(point -> kind.isInstance(point.point())).toList();
  }

  /** Total head just upstream of a part, m; empty where nothing determines it. */
  public OptionalDouble headBeforeM(PartPlace place) {
    return state.line(place.line()).parts().get(place.index()).headBeforeM();
  }

  /** The same just downstream of it. */
  public OptionalDouble headAfterM(PartPlace place) {
    PartState part = state.line(place.line()).parts().get(place.index());
    return part.headBeforeM().isPresent() && part.headLossM().isPresent()
        ? OptionalDouble.of(part.headBeforeM().getAsDouble() - part.headLossM().getAsDouble())
        : OptionalDouble.empty();
  }

  /**
   * The highest open water below a head, m, to which a hole there would run out; the head itself
   * without any.
   */
  public double openWaterBelowM(double headM) {
    return network.points(Basin.class).stream()
        .mapToDouble(Basin::levelM)
        .filter(level -> level < headM)
        .max()
        .orElse(headM);
  }

  /** The greatest head of any pump at no flow, m; 0 without a pump. */
  public double shutOffHeadM() {
    return PumpPlace.listChosen(network).stream()
        .map(place -> (Pump) network.line(place.line()).parts().get(place.partIndex()))
        .mapToDouble(pump -> pump.set().publishedShutOffHeadM())
        .max()
        .orElse(0);
  }
}
