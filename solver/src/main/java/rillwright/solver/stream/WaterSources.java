package rillwright.solver.stream;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Line;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;

/** The basins that water comes from, in a steady state. */
public final class WaterSources {
  private final SteadyState state;

  /** The sources in a state. */
  public WaterSources(SteadyState state) {
    this.state = state;
  }

  /** The basin from which most of the water at a point comes; empty if none does. */
  public Optional<PointName> of(PointName point) {
    Set<PointName> seen = new HashSet<>();
    PointName at = point;
    while (seen.add(at)) {
      if (state.network().point(at) instanceof Basin) {
        return Optional.of(at);
      }
      Optional<PointName> before = mostFrom(at);
      if (before.isEmpty()) {
        return Optional.empty();
      }
      at = before.get();
    }
    return Optional.empty();
  }

  /** Whether most of the water at a point comes from a basin. */
  boolean isFrom(PointName basin, PointName point) {
    return of(point).filter(basin::equals).isPresent();
  }

  /** Where most of what runs into a point comes from; without flow where its lines lead from. */
  private Optional<PointName> mostFrom(PointName point) {
    Optional<PointName> from = Optional.empty();
    double most = -1;
    for (Line line : state.network().lines()) {
      double flow = state.line(line.name()).flowM3PerS();
      boolean backwards = flow < 0;
      PointName start = backwards ? line.to() : line.from();
      PointName end = backwards ? line.from() : line.to();
      if (end.equals(point) && Math.abs(flow) > most) {
        most = Math.abs(flow);
        from = Optional.of(start);
      }
    }
    return from;
  }
}
