package rillwright.solver.law;

import rillwright.solver.invariant.Require;

/** The law of what takes no head at any flow: a gauge, a high point, the open end of an outlet. */
public record NoLoss(double leastFlow) implements HeadLaw {
  public NoLoss {
    Require.leastFlow(leastFlow);
  }

  /** Takes no head in either direction. */
  public static NoLoss bothWays() {
    return new NoLoss(Double.NEGATIVE_INFINITY);
  }

  /** Takes no head forwards and lets nothing back. */
  public static NoLoss forwardOnly() {
    return new NoLoss(0);
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return 0;
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return 0;
  }
}
