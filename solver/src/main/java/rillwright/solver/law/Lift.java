package rillwright.solver.law;

import rillwright.solver.invariant.Require;

/**
 * The law of a head given at any flow: what is added to a pump to see how much it lacks.
 *
 * @param headM the head, m, finite
 */
public record Lift(double headM) implements HeadLaw {
  public Lift {
    Require.finite("lift", headM, "m");
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return -headM;
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return 0;
  }
}
