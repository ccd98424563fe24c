package rillwright.solver.law;

import rillwright.solver.invariant.Require;

/**
 * A law that lets no more than a flow through, in either direction: what a valve does that is shut
 * just so far. At the limit it holds any head loss from its own upwards.
 *
 * @param law the law below the limit
 * @param mostM3PerS the limit, m³/s, 0 or more
 */
public record LimitedLaw(HeadLaw law, double mostM3PerS) implements HeadLaw {
  public LimitedLaw {
    Require.given("law", law);
    if (mostM3PerS != Double.POSITIVE_INFINITY) {
      Require.atLeast("limit of the flow", mostM3PerS, 0, "m³/s");
    }
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return law.headLossAt(flowM3PerS);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return law.slopeAt(flowM3PerS);
  }

  @Override
  public double leastFlow() {
    return Math.max(law.leastFlow(), -mostM3PerS);
  }

  @Override
  public double greatestFlow() {
    return Math.min(law.greatestFlow(), mostM3PerS);
  }
}
