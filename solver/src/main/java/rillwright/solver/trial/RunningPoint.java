package rillwright.solver.trial;

import java.util.OptionalDouble;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.pump.PumpSet;

/**
 * Where pumps run on their curve.
 *
 * @param flowM3PerS flow of all together, m³/s
 * @param headM head that they give, m
 * @param powerW electrical power of all together, W; empty if the sheet gives none
 * @param wireToWater wire-to-water efficiency: hydraulic power per electrical power; empty without
 *     power
 */
public record RunningPoint(
    double flowM3PerS, double headM, OptionalDouble powerW, OptionalDouble wireToWater) {

  /** Where a set runs at a flow. */
  static RunningPoint of(PumpSet set, double flowM3PerS, double densityKgPerM3) {
    double head = set.headAt(flowM3PerS);
    OptionalDouble power = set.powerAt(flowM3PerS);
    double waterPowerW = densityKgPerM3 * Gravity.STANDARD_M_PER_S2 * flowM3PerS * head;
    return new RunningPoint(
        flowM3PerS,
        head,
        power,
        power.orElse(0) > 0
            ? OptionalDouble.of(waterPowerW / power.getAsDouble())
            : OptionalDouble.empty());
  }
}
