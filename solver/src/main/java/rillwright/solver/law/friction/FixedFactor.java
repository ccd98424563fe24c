package rillwright.solver.law.friction;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.VelocityHeadLoss;

/**
 * Darcy–Weisbach with a friction factor that does not change with flow, h = f (L/D) V²/2g: textbook
 * work.
 *
 * <p>Source: Weisbach, J. (1845), Lehrbuch der Ingenieur- und Maschinen-Mechanik (from memory).
 */
public final class FixedFactor implements PipeFriction {
  private final double darcyFrictionFactor;
  private final VelocityHeadLoss loss;

  /**
   * The law of a pipe.
   *
   * @param lengthM length, m, 0 or more
   * @param bore inside of the pipe
   * @param darcyFrictionFactor f (not the Fanning factor, which is a quarter of it), greater than 0
   */
  public FixedFactor(double lengthM, Bore bore, double darcyFrictionFactor) {
    Require.atLeast("length", lengthM, 0, "m");
    Require.given("bore", bore);
    Require.positive("Darcy friction factor", darcyFrictionFactor, "");
    this.darcyFrictionFactor = darcyFrictionFactor;
    this.loss = new VelocityHeadLoss(darcyFrictionFactor * lengthM / bore.diameterM(), bore);
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return loss.headLossAt(flowM3PerS);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return loss.slopeAt(flowM3PerS);
  }

  @Override
  public double darcyFrictionFactorAt(double flowM3PerS) {
    return darcyFrictionFactor;
  }
}
