package rillwright.solver.law.minor;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;

/**
 * A head that stands as soon as water runs and drains away when it stops: full mats over which the
 * water goes. h = H Q/(|Q| + Q₀) with Q₀ far below any flow of interest.
 *
 * <p>Source: none; what is full runs over at a level that hardly depends on the flow, common
 * practice.
 *
 * @param headM H, m, 0 or more
 */
public record BackwaterLoss(double headM) implements HeadLaw {
  /** Q₀, m³/s: 0.1 % of the flow of a small fall. */
  private static final double ONSET_M3_PER_S = 1e-6;

  public BackwaterLoss {
    Require.atLeast("head", headM, 0, "m");
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return headM * flowM3PerS / (Math.abs(flowM3PerS) + ONSET_M3_PER_S);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    double all = Math.abs(flowM3PerS) + ONSET_M3_PER_S;
    return headM * ONSET_M3_PER_S / (all * all);
  }
}
