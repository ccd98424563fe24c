package rillwright.solver.study.uncertainty;

import java.util.Random;

/**
 * Samples of several quantities at once, spread evenly over each of them: of n samples of a
 * quantity one lies in each n-th part of its chances, in an order drawn by lot.
 *
 * <p>Source: McKay, M. D., Beckman, R. J. and Conover, W. J. (1979), "A comparison of three methods
 * for selecting values of input variables in the analysis of output from a computer code",
 * Technometrics 21(2), 239–245.
 */
public final class LatinHypercube {
  /** {@code chances[i][j]}, dimensionless, above 0 and below 1, of quantity i in sample j. */
  private final double[][] chances;

  private LatinHypercube(double[][] chances) {
    this.chances = chances;
  }

  /**
   * Samples drawn by lot.
   *
   * @param seed the same seed gives the same samples, on every machine: the generator's sequence is
   *     part of the specification of {@link Random}
   */
  public static LatinHypercube draw(int quantities, int samples, long seed) {
    Random lot = new Random(seed);
    double[][] chances = new double[quantities][samples];
    for (double[] of : chances) {
      for (int j = 0; j < samples; j++) {
        int other = lot.nextInt(j + 1);
        of[j] = of[other];
        of[other] = j;
      }
      for (int j = 0; j < samples; j++) {
        of[j] = (of[j] + inside(lot)) / samples;
      }
    }
    return new LatinHypercube(chances);
  }

  /** A place inside its n-th part, never at its ends. */
  private static double inside(Random lot) {
    return (lot.nextInt(1 << 24) + 0.5) / (1 << 24);
  }

  /** The chance at which a sample takes a quantity. */
  public double chance(int quantity, int sample) {
    return chances[quantity][sample];
  }
}
