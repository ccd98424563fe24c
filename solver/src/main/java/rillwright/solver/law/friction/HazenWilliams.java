package rillwright.solver.law.friction;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;

/**
 * Friction of a full pipe with water, h = 10.67 L Q^1.852 / (C^1.852 d^4.8704), SI.
 *
 * <p>Source: Williams, G. S. and Hazen, A. (1905), Hydraulic Tables, Wiley, in its SI form (from
 * memory). Only for water near room temperature in turbulent flow.
 */
public final class HazenWilliams implements PipeFriction {
  private static final double SI_CONSTANT = 10.67;
  private static final double FLOW_EXPONENT = 1.852;
  private static final double DIAMETER_EXPONENT = 4.8704;

  private final double lengthM;
  private final Bore bore;

  /** Loss over one metre of pipe by flow^1.852. */
  private final double lossPerMetre;

  /**
   * The law of a pipe.
   *
   * @param lengthM length, m, 0 or more
   * @param bore inside of the pipe
   * @param c Hazen and Williams's coefficient, 150 for smooth plastic, greater than 0
   */
  public HazenWilliams(double lengthM, Bore bore, double c) {
    Require.atLeast("length", lengthM, 0, "m");
    Require.given("bore", bore);
    Require.positive("Hazen and Williams's C", c, "");
    this.lengthM = lengthM;
    this.bore = bore;
    this.lossPerMetre =
        SI_CONSTANT / (Math.pow(c, FLOW_EXPONENT) * Math.pow(bore.diameterM(), DIAMETER_EXPONENT));
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return Math.copySign(
        lengthM * lossPerMetre * Math.pow(Math.abs(flowM3PerS), FLOW_EXPONENT), flowM3PerS);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return FLOW_EXPONENT
        * lengthM
        * lossPerMetre
        * Math.pow(Math.abs(flowM3PerS), FLOW_EXPONENT - 1);
  }

  @Override
  public double darcyFrictionFactorAt(double flowM3PerS) {
    return lossPerMetre
        * Math.pow(Math.abs(flowM3PerS), FLOW_EXPONENT)
        * bore.diameterM()
        / bore.velocityHeadAt(flowM3PerS);
  }
}
