package rillwright.solver.law.weir;

import rillwright.solver.law.Gravity;

/** How thick the sheet is at the brink. */
public enum BrinkRule {
  /**
   * Free overfall from a flat crest: 0.715 of the critical depth (q²/g)^⅓.
   *
   * <p>Source: Rouse, H. (1936), "Discharge characteristics of the free overfall", Civil
   * Engineering 6(4), 257–260 (from memory).
   */
  FREE_OVERFALL {
    @Override
    double depth(double flowPerWidthM2PerS, double headM) {
      return 0.715 * Math.cbrt(flowPerWidthM2PerS * flowPerWidthM2PerS / Gravity.STANDARD_M_PER_S2);
    }
  },

  /** Springing clear of a thin edge: 0.85 of the head upstream, common practice, no source. */
  THIN_EDGE {
    @Override
    double depth(double flowPerWidthM2PerS, double headM) {
      return 0.85 * headM;
    }
  };

  abstract double depth(double flowPerWidthM2PerS, double headM);
}
