package rillwright.solver.law.pump;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;

/**
 * One row of a pump's data sheet.
 *
 * @param flowM3PerS m³/s, 0 or more
 * @param headM m, 0 or more
 * @param powerW electrical power, W, where the sheet gives it
 * @param npshRequiredM net positive suction head required, m, where the sheet gives it
 */
public record PumpPoint(
    double flowM3PerS, double headM, OptionalDouble powerW, OptionalDouble npshRequiredM) {
  public PumpPoint {
    Require.atLeast("flow of a pump", flowM3PerS, 0, "m³/s");
    Require.atLeast("head of a pump", headM, 0, "m");
    Require.atLeast("power of a pump", powerW, 0, "W");
    Require.atLeast("NPSH required by a pump", npshRequiredM, 0, "m");
  }

  /** A row without an NPSH required. */
  public PumpPoint(double flowM3PerS, double headM, OptionalDouble powerW) {
    this(flowM3PerS, headM, powerW, OptionalDouble.empty());
  }

  /** A row without a power. */
  public PumpPoint(double flowM3PerS, double headM) {
    this(flowM3PerS, headM, OptionalDouble.empty());
  }
}
