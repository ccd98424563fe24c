package rillwright.solver.law.pump;

import java.util.OptionalDouble;

/**
 * The flow at which a pump makes the most flow and head of a watt, of the flows on its data sheet:
 * the greatest of Q·H/P. Looked for on a fine grid and then between its neighbours by the golden
 * section.
 */
public final class BestEfficiency {
  /** Least share of it that a pump should run at for long; common practice, no source. */
  public static final double MINIMUM_FLOW_SHARE = 0.25;

  private static final int STEPS = 100;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final double RELATIVE_ACCURACY = 1e-7;

  private BestEfficiency() {}

  /** The flow, m³/s, of one pump at full speed; empty if the sheet gives no power. */
  public static OptionalDouble flowM3PerS(PumpCurve curve) {
    double range = curve.lastFlowM3PerS();
    int best = 0;
    for (int i = 1; i <= STEPS; i++) {
      if (gain(curve, range * i / STEPS) > gain(curve, range * best / STEPS)) {
        best = i;
      }
    }
    return best == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            peak(
                curve,
                range * (best - 1) / STEPS,
                range * Math.min(STEPS, best + 1) / STEPS,
                RELATIVE_ACCURACY * range));
  }

  /** A flow of a set, m³/s, as a share of its best-efficiency flow; empty without power. */
  public static OptionalDouble shareOf(double flowM3PerS, PumpSet set) {
    OptionalDouble best = flowM3PerS(set.curve());
    return best.isPresent()
        ? OptionalDouble.of(
            flowM3PerS
                / set.publishedRangeM3PerS()
                * set.curve().lastFlowM3PerS()
                / best.getAsDouble())
        : best;
  }

  /** Whether a share of it is below the least; not so where it is not known. */
  public static boolean isBelowMinimum(OptionalDouble share) {
    return share.isPresent() && share.getAsDouble() < MINIMUM_FLOW_SHARE;
  }

  private static double gain(PumpCurve curve, double flow) {
    double power = curve.powerAt(flow).orElse(0);
    return power > 0 ? flow * curve.headAt(flow) / power : 0;
  }

  private static double peak(PumpCurve curve, double from, double to, double accuracy) {
    double low = from;
    double high = to;
    while (high - low > accuracy) {
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      if (gain(curve, left) < gain(curve, right)) {
        low = left;
      } else {
        high = right;
      }
    }
    return (low + high) / 2;
  }
}
