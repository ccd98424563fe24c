package rillwright.solver.law;

import rillwright.solver.invariant.Require;

/**
 * A law that lets water through in one direction only.
 *
 * @param law the law in that direction
 * @param direction the direction
 */
public record OneWayLaw(HeadLaw law, Direction direction) implements HeadLaw {
  public OneWayLaw {
    Require.given("law", law);
    Require.given("direction", direction);
  }

  /** A direction along a line. */
  public enum Direction {
    FORWARD,
    BACKWARD
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
    return direction == Direction.FORWARD ? Math.max(0, law.leastFlow()) : law.leastFlow();
  }

  @Override
  public double greatestFlow() {
    return direction == Direction.BACKWARD ? Math.min(0, law.greatestFlow()) : law.greatestFlow();
  }
}
