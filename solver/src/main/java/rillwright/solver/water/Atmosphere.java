package rillwright.solver.water;

/** The air above the water. */
public final class Atmosphere {
  private static final double EARTH_RADIUS_M = 6356766;

  private Atmosphere() {}

  /**
   * Mean pressure of the air, Pa, at a height above sea level.
   *
   * <p>Source: U.S. Standard Atmosphere, 1976, lowest layer, by geopotential height z r/(r + z).
   *
   * @param elevationM z, m, below 11 000
   */
  public static double pressurePa(double elevationM) {
    double geopotentialM = elevationM * EARTH_RADIUS_M / (EARTH_RADIUS_M + elevationM);
    return 101325 * Math.pow(1 - 2.25577e-5 * geopotentialM, 5.25588);
  }
}
