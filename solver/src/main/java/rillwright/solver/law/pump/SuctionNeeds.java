package rillwright.solver.law.pump;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;

/**
 * What a pump's data sheet asks of the water at its inlet.
 *
 * @param minSubmergenceM least depth of water over its inlet, m, where known
 * @param npshRequiredM net positive suction head that it needs at any flow, m, where known
 * @param selfPrimingM height over the water from which it primes itself, m, where it does
 */
public record SuctionNeeds(
    OptionalDouble minSubmergenceM, OptionalDouble npshRequiredM, OptionalDouble selfPrimingM) {
  /** Nothing said. */
  public static final SuctionNeeds NONE =
      new SuctionNeeds(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

  public SuctionNeeds {
    Require.atLeast("least submergence", minSubmergenceM, 0, "m");
    Require.atLeast("NPSH required", npshRequiredM, 0, "m");
    Require.atLeast("self-priming height", selfPrimingM, 0, "m");
  }
}
