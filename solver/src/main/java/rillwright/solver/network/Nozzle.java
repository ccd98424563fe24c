package rillwright.solver.network;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;

/**
 * A nozzle at the end of a pipe.
 *
 * @param opening its opening
 * @param dischargeCoefficient dimensionless, greater than 0
 */
public record Nozzle(Bore opening, double dischargeCoefficient) {
  public Nozzle {
    Require.given("opening of a nozzle", opening);
    Require.positive("discharge coefficient", dischargeCoefficient, "");
  }
}
