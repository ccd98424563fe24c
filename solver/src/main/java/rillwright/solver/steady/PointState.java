package rillwright.solver.steady;

import java.util.OptionalDouble;
import rillwright.solver.network.Point;

/**
 * What happens at a point.
 *
 * @param point which
 * @param headM total head, m; a starved chamber's is its intake level; empty where nothing
 *     determines it
 * @param missingHeadM by how much a starved chamber lacks level, m; empty at other points
 * @param outflowM3PerS flow out of the network here, m³/s: over a fall, out of an outlet, into a
 *     basin (negative out of it), or drawn
 */
public record PointState(
    Point point, OptionalDouble headM, OptionalDouble missingHeadM, double outflowM3PerS) {

  /** Whether it gets less than its target by more than anyone sees. */
  public boolean isUnderTarget() {
    return point.isMissedBy(outflowM3PerS);
  }

  /** Whether anything determines its head. */
  public boolean isDetermined() {
    return headM.isPresent();
  }

  /** Whether it is a chamber that has fallen to its intake. */
  public boolean isStarved() {
    return missingHeadM.isPresent();
  }

  /** The level that pipes leaving it draw from, m: below the intake in a starved chamber. */
  public OptionalDouble drawnHeadM() {
    return headM.isPresent()
        ? OptionalDouble.of(headM.getAsDouble() - missingHeadM.orElse(0))
        : headM;
  }
}
