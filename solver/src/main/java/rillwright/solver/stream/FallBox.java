package rillwright.solver.stream;

import rillwright.solver.invariant.Require;

/**
 * The box of a fall.
 *
 * @param areaM2 its water surface, m², above 0
 * @param depthM of water that stays in it below the crest, m
 */
public record FallBox(double areaM2, double depthM) {
  public FallBox {
    Require.positive("area of a fall's box", areaM2, "m²");
    Require.atLeast("depth of a fall's box", depthM, 0, "m");
  }
}
