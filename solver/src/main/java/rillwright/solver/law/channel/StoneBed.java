package rillwright.solver.law.channel;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Gravity;

/**
 * Resistance of stones that the water hardly covers: √(8/f) = a₁ a₂ x / √(a₁² + a₂² x^(5/3)) with x
 * = R/D84, a₁ = 6.5, a₂ = 2.5, and V = √(8 g R S / f).
 *
 * <p>Source: Ferguson, R. (2007), "Flow resistance equations for gravel- and boulder-bed streams",
 * Water Resources Research 43, W05427 (constants as in a program that cites it; another has 5.5 and
 * 2.2). Errors by a factor of two are usual.
 *
 * @param d84M size that 84 % of the stones are smaller than, m, greater than 0
 */
public record StoneBed(double d84M) implements BedLaw {
  private static final double DEEP = 6.5;
  private static final double SHALLOW = 2.5;

  public StoneBed {
    Require.positive("size of stones", d84M, "m");
  }

  @Override
  public double velocityMPerS(double hydraulicRadiusM, double slope) {
    double x = hydraulicRadiusM / d84M;
    double root = Math.cbrt(x);
    double conveyance =
        DEEP * SHALLOW * x / Math.sqrt(DEEP * DEEP + SHALLOW * SHALLOW * x * root * root);
    return conveyance * Math.sqrt(Gravity.STANDARD_M_PER_S2 * hydraulicRadiusM * slope);
  }
}
