package rillwright.solver.law.minor;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.HeadLaw;

/**
 * Head above a nozzle, h = (Q/(Cd A))²/2g with the sign of the flow: Torricelli's law with a
 * discharge coefficient.
 *
 * <p>Source: textbook form, e.g. Cengel and Cimbala, Fluid Mechanics (2006), section 8-8 (section
 * from memory).
 *
 * @param opening the nozzle's opening
 * @param dischargeCoefficient Cd, dimensionless, greater than 0
 * @param leastFlow 0 for a nozzle in air, which does not suck; negative infinity under water
 */
public record NozzleLoss(Bore opening, double dischargeCoefficient, double leastFlow)
    implements HeadLaw {
  public NozzleLoss {
    Require.given("opening", opening);
    Require.positive("discharge coefficient", dischargeCoefficient, "");
    Require.leastFlow(leastFlow);
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return resistance() * flowM3PerS * Math.abs(flowM3PerS);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return 2 * resistance() * Math.abs(flowM3PerS);
  }

  private double resistance() {
    double effectiveArea = dischargeCoefficient * opening.areaM2();
    return 1 / (2 * Gravity.STANDARD_M_PER_S2 * effectiveArea * effectiveArea);
  }
}
