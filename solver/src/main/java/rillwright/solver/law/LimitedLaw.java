package rillwright.solver.law;

/**
 * A law that lets no more than a flow through, in either direction: what a valve does that is shut
 * just so far. At the limit it holds any head loss from its own upwards.
 *
 * @param law the law below the limit
 * @param mostM3PerS the limit, m³/s, 0 or more
 */
public record LimitedLaw(HeadLaw law, double mostM3PerS) implements HeadLaw {
  public LimitedLaw {
    if (!(mostM3PerS >= 0)) {
      throw new IllegalArgumentException(
          "the limit of a flow is " + mostM3PerS + "; it must be 0 or more");
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
