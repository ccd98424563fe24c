package rillwright.solver.law.friction;

/**
 * Darcy friction factor of turbulent flow in a circular pipe, smooth to rough.
 *
 * <p>1/√f = −2 log₁₀(k/(3.7 D) + 2.51/(Re √f)), solved to machine accuracy.
 *
 * <p>Source: Colebrook, C. F. (1939), "Turbulent flow in pipes, with particular reference to the
 * transition region between the smooth and rough pipe laws", J. Institution of Civil Engineers 11,
 * 133–156, as in Hydraulic Institute, Engineering Data Book, section III, eq. 3.A.2.
 */
public final class ColebrookWhite {
  private static final double LN10 = Math.log(10);

  /** Newton's method doubles the correct digits: after a change this small all are. */
  private static final double LAST_CHANGE = 1e-9;

  private static final int MOST_STEPS = 60;

  private ColebrookWhite() {}

  /** The factor and how it changes with the Reynolds number. */
  public record Factor(double darcyFrictionFactor, double slopeByReynolds) {}

  /**
   * Darcy friction factor f, dimensionless.
   *
   * @param relativeRoughness k/D, dimensionless, 0 or more
   * @param reynolds Reynolds number VD/ν, dimensionless, greater than 0; meant for 4000 upwards
   */
  public static double darcyFrictionFactor(double relativeRoughness, double reynolds) {
    double root = inverseRoot(relativeRoughness, reynolds);
    return 1 / (root * root);
  }

  /** The factor with its derivative by the Reynolds number. */
  public static Factor factorAt(double relativeRoughness, double reynolds) {
    double x = inverseRoot(relativeRoughness, reynolds);
    // x = −2 log₁₀(a + b x), a = k/3.7D, b = 2.51/Re; with c = 2/(ln 10 (a + b x)):
    // dx/db = −c x/(1 + c b), db/dRe = −b/Re, df/dx = −2/x³.
    double b = 2.51 / reynolds;
    double c = 2 / (LN10 * (relativeRoughness / 3.7 + b * x));
    double slopeOfRoot = c * x / (1 + c * b) * b / reynolds;
    return new Factor(1 / (x * x), -2 * slopeOfRoot / (x * x * x));
  }

  /**
   * x = 1/√f by Newton's method on x + 2 log₁₀(a + b x), which is concave and rising: no step
   * overshoots after the first.
   */
  private static double inverseRoot(double relativeRoughness, double reynolds) {
    double a = relativeRoughness / 3.7;
    double b = 2.51 / reynolds;
    double x = -2 * Math.log10(a + 5.74 / Math.pow(reynolds, 0.9));
    if (!(x > 0.5)) {
      x = 0.5;
    }
    for (int step = 0; step < MOST_STEPS; step++) {
      double inside = a + b * x;
      double change = (x + 2 / LN10 * Math.log(inside)) / (1 + 2 * b / (LN10 * inside));
      double next = Math.max(x - change, x / 4);
      if (Math.abs(next - x) <= LAST_CHANGE * x) {
        return next;
      }
      x = next;
    }
    return x;
  }
}
