package rillwright.solver.law.minor;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;

/**
 * Loss known at one flow, h = hr |Q/Qr|ⁿ with the sign of the flow.
 *
 * <p>Source: the general form of head-loss formulas, e.g. Daugherty and Franzini, Fluid Mechanics
 * with Engineering Applications, chapter 8 (from memory); for filters n lies between 1 (media) and
 * 2 (ports), common practice.
 *
 * @param ratedHeadM hr, m, greater than 0
 * @param ratedFlowM3PerS Qr, m³/s, greater than 0
 * @param exponent n, dimensionless, 1 or more
 */
public record PowerLoss(double ratedHeadM, double ratedFlowM3PerS, double exponent)
    implements HeadLaw {
  public PowerLoss {
    Require.positive("rated head", ratedHeadM, "m");
    Require.positive("rated flow", ratedFlowM3PerS, "m³/s");
    Require.atLeast("exponent", exponent, 1, "");
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    double relative = Math.abs(flowM3PerS) / ratedFlowM3PerS;
    return Math.copySign(ratedHeadM * Math.pow(relative, exponent), flowM3PerS);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    double relative = Math.abs(flowM3PerS) / ratedFlowM3PerS;
    return exponent * ratedHeadM / ratedFlowM3PerS * Math.pow(relative, exponent - 1);
  }
}
