package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;

/**
 * Open water held at a level: a pond, a hidden reservoir.
 *
 * @param levelM level held, m
 * @param shape area of its water by level, where known: among stones what the voids leave of it
 * @param overflowM level at which it runs over, m, where known
 * @param gradeM level of the ground around, m, where known
 * @param linerEdgeM level of the liner's edge, m, where known
 * @param leastLevelM level below which a pump that draws from it without a skimmer draws air, m,
 *     where the file says it
 * @param evaporatesM2 surface from which its water evaporates, m², 0 where it is covered; empty:
 *     the surface of its water
 * @param fullOfStone whether stones fill it, its water in the voids between
 */
public record Basin(
    PointName name,
    double levelM,
    Optional<BasinShape> shape,
    OptionalDouble overflowM,
    OptionalDouble gradeM,
    OptionalDouble linerEdgeM,
    OptionalDouble leastLevelM,
    OptionalDouble evaporatesM2,
    boolean fullOfStone)
    implements Point {
  public Basin {
    Require.given("name of a basin", name);
    Require.finite("level of a basin", levelM, "m");
    Require.given("shape of a basin", shape);
    Require.finite("overflow of a basin", overflowM, "m");
    Require.finite("grade of a basin", gradeM, "m");
    Require.finite("liner's edge of a basin", linerEdgeM, "m");
    Require.finite("least level of a basin", leastLevelM, "m");
    Require.atLeast("surface that evaporates", evaporatesM2, 0, "m²");
  }

  /** Open water, not known at which level a pump draws air. */
  public Basin(
      PointName name,
      double levelM,
      Optional<BasinShape> shape,
      OptionalDouble overflowM,
      OptionalDouble gradeM,
      OptionalDouble linerEdgeM) {
    this(
        name,
        levelM,
        shape,
        overflowM,
        gradeM,
        linerEdgeM,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false);
  }

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
    return new Basin(
        name,
        newLevelM,
        shape,
        overflowM,
        gradeM,
        linerEdgeM,
        leastLevelM,
        evaporatesM2,
        fullOfStone);
  }
}
