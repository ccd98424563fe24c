package rillwright.solver.law.filter;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;

/**
 * An open filter: it never takes more head than it is high; what its mats do not pass then goes
 * over them.
 *
 * <p>Source: none; the water over the top is taken to cost nothing more, common practice.
 *
 * @param mats the law of what is in it
 * @param topM head at which water goes over, m, greater than 0
 */
public record OpenTopLaw(HeadLaw mats, double topM) implements HeadLaw {
  /** Halvings of the flow that leave nothing of it to be seen. */
  private static final int HALVINGS = 60;

  public OpenTopLaw {
    Require.given("law of the mats", mats);
    Require.positive("open top", topM, "m");
  }

  /** Whether water goes over the mats at a flow. */
  public boolean runsOverAt(double flowM3PerS) {
    return Math.abs(mats.headLossAt(flowM3PerS)) > topM;
  }

  /** What the mats pass of a flow, m³/s, without sign. */
  public double passedAt(double flowM3PerS) {
    double high = Math.abs(flowM3PerS);
    if (!runsOverAt(high)) {
      return high;
    }
    double low = 0;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (runsOverAt(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return Math.max(-topM, Math.min(topM, mats.headLossAt(flowM3PerS)));
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return runsOverAt(flowM3PerS) ? 0 : mats.slopeAt(flowM3PerS);
  }
}
