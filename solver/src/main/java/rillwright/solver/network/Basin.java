package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Open water held at a level: a pond, a hidden reservoir.
 *
 * @param levelM level held, m
 * @param shape area by level, where known
 * @param overflowM level at which it runs over, m, where known
 * @param gradeM level of the ground around, m, where known
 * @param linerEdgeM level of the liner's edge, m, where known
 */
public record Basin(
    PointName name,
    double levelM,
    Optional<BasinShape> shape,
    OptionalDouble overflowM,
    OptionalDouble gradeM,
    OptionalDouble linerEdgeM)
    implements Point {

  @Override
  public String kind() {
    return "basin";
  }

  @Override
  public OptionalDouble heldHeadM() {
    return OptionalDouble.of(levelM);
  }

  @Override
  public EndLoss usualEndLoss() {
    return EndLoss.OPEN_WATER;
  }

  /** The same basin at another level. */
  public Basin withLevel(double newLevelM) {
    return new Basin(name, newLevelM, shape, overflowM, gradeM, linerEdgeM);
  }
}
