package rillwright.solver.network;

import java.util.OptionalDouble;

/**
 * A small open tank whose level the balance finds: behind a skimmer, a settling chamber.
 *
 * @param floorM level of its floor, m
 * @param intakeM lowest level at which the pump still draws water, m, at least the floor
 * @param topM level at which it runs over, m, where it can
 * @param areaM2 area, m², where known
 */
public record Chamber(
    PointName name, double floorM, double intakeM, OptionalDouble topM, OptionalDouble areaM2)
    implements Point {

  @Override
  public String kind() {
    return "chamber";
  }

  @Override
  public OptionalDouble heldHeadM() {
    return OptionalDouble.empty();
  }

  @Override
  public EndLoss usualEndLoss() {
    return EndLoss.OPEN_WATER;
  }
}
