package rillwright.solver.law.friction;

import rillwright.solver.law.HeadLaw;

/** The head law of a pipe's wall. */
public interface PipeFriction extends HeadLaw {

  /**
   * The Darcy friction factor f in h = f (L/D) V²/2g that gives the law's loss at a flow,
   * dimensionless.
   *
   * @param flowM3PerS flow, m³/s, not 0
   */
  double darcyFrictionFactorAt(double flowM3PerS);
}
