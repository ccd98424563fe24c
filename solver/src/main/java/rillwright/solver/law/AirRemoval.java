package rillwright.solver.law;

/**
 * Whether running water takes air along down a pipe that falls: its Froude number v/√(g D) must
 * reach 0.61 + 0.56 √(sin θ), θ the fall below the horizontal.
 *
 * <p>Source: the form of Escarameia, M. (2007), "Investigating hydraulic removal of air from water
 * pipelines", Proceedings of the ICE, Water Management 160(1), 25–34; the constant 0.61 from
 * memory. Tested to some 22° and in larger pipes; in garden bores it is unproven and perhaps too
 * hopeful.
 */
public final class AirRemoval {
  private static final double LEVEL = 0.61;
  private static final double BY_FALL = 0.56;

  private AirRemoval() {}

  /**
   * The least Froude number that sweeps air out.
   *
   * @param fallDegrees below the horizontal, 0 to 90
   */
  public static double leastFroudeNumber(double fallDegrees) {
    return LEVEL + BY_FALL * Math.sqrt(Math.sin(Math.toRadians(fallDegrees)));
  }
}
