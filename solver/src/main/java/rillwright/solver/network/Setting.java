package rillwright.solver.network;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.water.Water;

/**
 * What a part finds around it.
 *
 * @param water that runs through it
 * @param levelBeforeM level of the open water at which its line begins, m; empty where it begins
 *     elsewhere
 */
public record Setting(Water water, OptionalDouble levelBeforeM) {
  public Setting {
    Require.given("water", water);
    Require.finite("level upstream of a part", levelBeforeM, "m");
  }
}
