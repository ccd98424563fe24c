package rillwright.solver.law.pump;

import java.util.OptionalDouble;

/**
 * One row of a pump's data sheet.
 *
 * @param flowM3PerS m³/s, 0 or more
 * @param headM m, 0 or more
 * @param powerW electrical power, W, where the sheet gives it
 */
public record PumpPoint(double flowM3PerS, double headM, OptionalDouble powerW) {
  public PumpPoint {
    boolean valid = flowM3PerS >= 0 && headM >= 0 && powerW.orElse(0) >= 0;
    if (!valid || Double.isInfinite(flowM3PerS + headM + powerW.orElse(0))) {
      throw new IllegalArgumentException("a pump's flow, head and power must be 0 or more");
    }
  }
}
