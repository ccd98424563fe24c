package rillwright.solver.balance.content;

import java.util.function.DoubleUnaryOperator;

/**
 * How far to go along a Newton step: where the slope of the content along the step vanishes.
 *
 * <p>The slope φ(t) = Σ (h(q + t Δq) − ΔH) Δq is a sum of head errors times flow changes. It rises
 * strictly along the step and is negative at its start, and unlike the content itself it keeps its
 * digits in large networks.
 */
public final class StepSearch {
  /** A full step is good enough if it leaves no more than this share of the slope. */
  private static final double FULL_STEP_SHARE = 0.25;

  /** A shortened step ends where no more than this share of the slope is left. */
  private static final double SHORT_STEP_SHARE = 0.1;

  private static final int MOST_TRIES = 60;

  private StepSearch() {}

  /**
   * The share of the step to take, above 0 and up to 1.
   *
   * @param slope φ(t), rising in t
   */
  public static double lengthOf(DoubleUnaryOperator slope) {
    double atStart = slope.applyAsDouble(0);
    double atFull = slope.applyAsDouble(1);
    if (!(atStart < 0) || atFull <= FULL_STEP_SHARE * -atStart) {
      return 1;
    }
    double low = 0;
    double atLow = atStart;
    double high = 1;
    double atHigh = atFull;
    double best = 1;
    for (int i = 0; i < MOST_TRIES; i++) {
      double bySecant = low + (high - low) * -atLow / (atHigh - atLow);
      // Halving at every other try keeps the bracket shrinking where the slope has a kink; slopes
      // too
      // large for a number have no secant.
      boolean usable = i % 2 == 0 && Double.isFinite(bySecant);
      double t = usable ? bySecant : (low + high) / 2;
      double at = slope.applyAsDouble(t);
      best = t;
      if (Math.abs(at) <= SHORT_STEP_SHARE * -atStart) {
        return t;
      }
      if (at < 0) {
        low = t;
        atLow = at;
      } else {
        high = t;
        atHigh = at;
      }
    }
    return low > 0 ? low : best;
  }
}
