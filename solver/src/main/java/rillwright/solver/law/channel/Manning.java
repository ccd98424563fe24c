package rillwright.solver.law.channel;

import rillwright.solver.invariant.Require;

/**
 * Manning's formula V = R^⅔ S^½ / n.
 *
 * <p>Source: Chow, V. T. (1959), Open-Channel Hydraulics, section 5-6 (from memory). Made for water
 * well deeper than what is on its bed.
 *
 * @param n s/m^⅓, greater than 0
 */
public record Manning(double n) implements BedLaw {
  public Manning {
    Require.positive("Manning n", n, "s/m^⅓");
  }

  @Override
  public double velocityMPerS(double hydraulicRadiusM, double slope) {
    double root = Math.cbrt(hydraulicRadiusM);
    return root * root * Math.sqrt(slope) / n;
  }
}
