package rillwright.solver.law.curve;

import java.util.List;
import rillwright.solver.invariant.Require;

/**
 * Shape-preserving piecewise cubic through points: between two points it rises or falls only as
 * they do; straight beyond the first and the last.
 *
 * <p>Source: Fritsch, F. N. and Butland, J. (1984), "A method for constructing local monotone
 * piecewise cubic interpolants", SIAM J. Sci. Stat. Comput. 5(2), 300–304, with the three-point end
 * slopes of Moler, C. (2004), Numerical Computing with MATLAB, section 3.6; SciPy's interpolator,
 * which cites both, has the same slopes.
 */
public final class MonotoneCubic {
  private final double[] x;
  private final double[] y;
  private final double[] slope;

  /** A point of a curve. */
  public record Knot(double x, double y) {
    public Knot {
      Require.finite("x of a curve's point", x, "");
      Require.finite("y of a curve's point", y, "");
    }
  }

  /** How straight the curve may run at its ends. */
  public enum EndSlopes {
    /** The three-point end slope as it comes out, 0 included. */
    AS_FITTED,
    /**
     * At the last point, never flatter than a third of the last secant, so that the curve goes on
     * beyond it.
     */
    STEEP_AT_LAST,
    /** The same at the first and at the last point. */
    STEEP_AT_BOTH
  }

  private MonotoneCubic(double[] x, double[] y, double[] slope) {
    this.x = x;
    this.y = y;
    this.slope = slope;
  }

  /**
   * The curve through points.
   *
   * @param knots two or more, x strictly rising, finite
   */
  public static MonotoneCubic through(List<Knot> knots, EndSlopes endSlopes) {
    Require.all("points of a curve", knots);
    Require.given("end slopes", endSlopes);
    int count = knots.size();
    if (count < 2) {
      throw new IllegalArgumentException("a curve needs two points or more");
    }
    double[] x = knots.stream().mapToDouble(Knot::x).toArray();
    double[] y = knots.stream().mapToDouble(Knot::y).toArray();
    double[] step = new double[count - 1];
    double[] secant = new double[count - 1];
    for (int i = 0; i < count - 1; i++) {
      step[i] = x[i + 1] - x[i];
      secant[i] = (y[i + 1] - y[i]) / step[i];
      if (!(step[i] > 0) || !Double.isFinite(secant[i])) {
        throw new IllegalArgumentException(
            "the points of a curve must be finite and in rising order");
      }
    }
    double[] slope = new double[count];
    if (count == 2) {
      slope[0] = secant[0];
      slope[1] = secant[0];
      return new MonotoneCubic(x, y, slope);
    }
    for (int i = 1; i < count - 1; i++) {
      slope[i] = interiorSlope(step[i - 1], step[i], secant[i - 1], secant[i]);
    }
    int last = count - 1;
    slope[0] = endSlope(step[0], step[1], secant[0], secant[1]);
    slope[last] = endSlope(step[last - 1], step[last - 2], secant[last - 1], secant[last - 2]);
    if (endSlopes != EndSlopes.AS_FITTED) {
      slope[last] = notFlatterThanAThird(slope[last], secant[last - 1]);
    }
    if (endSlopes == EndSlopes.STEEP_AT_BOTH) {
      slope[0] = notFlatterThanAThird(slope[0], secant[0]);
    }
    return new MonotoneCubic(x, y, slope);
  }

  /** Weighted harmonic mean of the neighbouring secants; 0 where they differ in sign. */
  private static double interiorSlope(double h1, double h2, double s1, double s2) {
    if (s1 * s2 <= 0) {
      return 0;
    }
    double w1 = 2 * h2 + h1;
    double w2 = h2 + 2 * h1;
    return (w1 + w2) / (w1 / s1 + w2 / s2);
  }

  /** Three-point slope at an end; h1 and s1 belong to the interval at the end. */
  private static double endSlope(double h1, double h2, double s1, double s2) {
    double slope = ((2 * h1 + h2) * s1 - h1 * s2) / (h1 + h2);
    if (Math.signum(slope) != Math.signum(s1)) {
      return 0;
    }
    if (Math.signum(s1) != Math.signum(s2) && Math.abs(slope) > 3 * Math.abs(s1)) {
      return 3 * s1;
    }
    return slope;
  }

  private static double notFlatterThanAThird(double slope, double secant) {
    return Math.abs(slope) < Math.abs(secant) / 3 ? secant / 3 : slope;
  }

  /** Least x of the points. */
  public double firstX() {
    return x[0];
  }

  /** Greatest x of the points. */
  public double lastX() {
    return x[x.length - 1];
  }

  /** Whether each point is higher than the one before. */
  public boolean increases() {
    for (int i = 1; i < y.length; i++) {
      if (!(y[i] > y[i - 1])) {
        return false;
      }
    }
    return true;
  }

  /** The curve at an x; straight on beyond the points. */
  public double valueAt(double at) {
    if (at <= x[0]) {
      return y[0] + slope[0] * (at - x[0]);
    }
    int last = x.length - 1;
    if (at >= x[last]) {
      return y[last] + slope[last] * (at - x[last]);
    }
    int i = intervalOf(at);
    double h = x[i + 1] - x[i];
    double t = (at - x[i]) / h;
    double u = 1 - t;
    return u * u * (1 + 2 * t) * y[i]
        + t * u * u * h * slope[i]
        + t * t * (3 - 2 * t) * y[i + 1]
        - t * t * u * h * slope[i + 1];
  }

  /** The derivative at an x. */
  public double slopeAt(double at) {
    if (at <= x[0]) {
      return slope[0];
    }
    int last = x.length - 1;
    if (at >= x[last]) {
      return slope[last];
    }
    int i = intervalOf(at);
    double h = x[i + 1] - x[i];
    double t = (at - x[i]) / h;
    double secant = (y[i + 1] - y[i]) / h;
    return 6 * t * (1 - t) * secant
        + (1 - t) * (1 - 3 * t) * slope[i]
        + t * (3 * t - 2) * slope[i + 1];
  }

  private int intervalOf(double at) {
    int found = java.util.Arrays.binarySearch(x, at);
    return found >= 0 ? found : -found - 2;
  }
}
