package rillwright.solver.network;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;

/**
 * A small open tank whose level the balance finds: downstream of a skimmer, a settling chamber.
 *
 * @param floorM level of its floor, m
 * @param intakeM level of the pump's inlet, down to which the chamber can be drawn, m, at least the
 *     floor
 * @param topM level at which it runs over, m, where it can
 * @param areaM2 area, m², where known
 */
public record Chamber(
    PointName name, double floorM, double intakeM, OptionalDouble topM, OptionalDouble areaM2)
    implements Point {
  public Chamber {
    Require.given("name of a chamber", name);
    Require.finite("floor of a chamber", floorM, "m");
    Require.finite("intake of a chamber", intakeM, "m");
    Require.notBelow("intake of a chamber", intakeM, "floor", floorM);
    Require.finite("top of a chamber", topM, "m");
    topM.ifPresent(top -> Require.above("top of a chamber", top, floorM, "m"));
    topM.ifPresent(top -> Require.notBelow("top of a chamber", top, "intake", intakeM));
    Require.positive("area of a chamber", areaM2, "m²");
  }

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
