package rillwright.solver.network;

import rillwright.solver.invariant.Require;

/**
 * A screen or cage through which water enters a line or a pump.
 *
 * @param areaM2 gross, of all its faces, m², above 0
 * @param open share of it that is holes, above 0
 */
public record Screen(double areaM2, double open) {
  /** Share of holes where none is given; common practice, no source. */
  public static final double USUALLY_OPEN = 0.5;

  public Screen {
    Require.positive("area of a screen", areaM2, "m²");
    Require.positive("open share of a screen", open, "");
    Require.between("open share of a screen", open, 0, 1, "");
  }

  /** Speed of the water that comes up to it, m/s, 0 or more. */
  public double approachMPerS(double flowM3PerS) {
    return Math.abs(flowM3PerS) / areaM2;
  }

  /** Speed of the water through its holes, m/s, 0 or more. */
  public double throughMPerS(double flowM3PerS) {
    return approachMPerS(flowM3PerS) / open;
  }
}
