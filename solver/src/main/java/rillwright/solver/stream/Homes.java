package rillwright.solver.stream;

import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Where water that leaves a network returns to. */
public final class Homes {
  private final StreamPlan plan;
  private final List<PointName> basins;

  /** The homes of a plan. */
  public Homes(StreamPlan plan) {
    this.plan = plan;
    this.basins = plan.network().points(Basin.class).stream().map(Point::name).toList();
  }

  /** The stream that begins at a fall or outlet. */
  public Optional<Stream> streamFrom(PointName point) {
    return plan.streams().stream().filter(stream -> stream.from().equals(point)).findFirst();
  }

  /**
   * The basin that a fall or outlet runs back to: its stream's, the one that it says, or the only
   * one; empty if that is not known.
   */
  public Optional<PointName> of(Point point) {
    Optional<PointName> shown =
        streamFrom(point.name())
            .map(Stream::to)
            .or(() -> point instanceof Fall fall ? fall.returnsTo() : Optional.empty());
    return shown.isEmpty() && basins.size() == 1 ? Optional.of(basins.get(0)) : shown;
  }
}
