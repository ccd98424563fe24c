package rillwright.solver.network;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Gravity;
import rillwright.solver.water.Water;

/**
 * Where pipes meet, closed.
 *
 * @param elevationM elevation of its middle, m, where known: for its pressure
 * @param drawM3PerS fixed flow taken out, m³/s; negative puts in
 */
public record Tee(PointName name, OptionalDouble elevationM, double drawM3PerS) implements Point {
  public Tee {
    Require.given("name of a tee", name);
    Require.finite("elevation of a tee", elevationM, "m");
    Require.finite("draw of a tee", drawM3PerS, "m³/s");
  }

  /**
   * Stagnation pressure in it, Pa above the air's, the velocity head of its pipes included; empty
   * where its elevation or its head is not known.
   *
   * @param headM its total head, m
   */
  public OptionalDouble pressurePa(OptionalDouble headM, Water water) {
    return headM.isPresent() && elevationM.isPresent()
        ? OptionalDouble.of(
            water.densityKgPerM3()
                * Gravity.STANDARD_M_PER_S2
                * (headM.getAsDouble() - elevationM.getAsDouble()))
        : OptionalDouble.empty();
  }

  @Override
  public String kind() {
    return "tee";
  }

  @Override
  public OptionalDouble heldHeadM() {
    return OptionalDouble.empty();
  }

  @Override
  public EndLoss usualEndLoss() {
    return EndLoss.NONE;
  }
}
