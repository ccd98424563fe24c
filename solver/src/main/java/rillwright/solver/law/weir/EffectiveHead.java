package rillwright.solver.law.weir;

/**
 * Effective head over a small weir: the head measured plus what viscosity and surface tension are
 * worth.
 *
 * <p>From 10 mm upwards the published constant is added; below, it is tapered to nothing at no
 * head, so that no water means no flow and the slope stays continuous. The taper is ours; the
 * formulas are not made for such heads.
 */
final class EffectiveHead {
  private static final double TAPERED_BELOW_M = 0.010;

  private EffectiveHead() {}

  static double at(double headM, double additionM) {
    if (headM >= TAPERED_BELOW_M) {
      return headM + additionM;
    }
    double s = headM / TAPERED_BELOW_M;
    return headM + additionM * s * (2 - s);
  }

  static double slopeAt(double headM, double additionM) {
    if (headM >= TAPERED_BELOW_M) {
      return 1;
    }
    double s = headM / TAPERED_BELOW_M;
    return 1 + additionM * 2 * (1 - s) / TAPERED_BELOW_M;
  }
}
