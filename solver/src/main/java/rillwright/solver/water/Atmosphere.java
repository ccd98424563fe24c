package rillwright.solver.water;

/** The air above the water. */
public final class Atmosphere {
  private Atmosphere() {}

  /**
   * Mean pressure of the air, Pa, at a height above sea level.
   *
   * <p>Source: U.S. Standard Atmosphere, 1976, lowest layer.
   *
   * @param elevationM m, below 11 000
   */
  public static double pressurePa(double elevationM) {
    return 101325 * Math.pow(1 - 2.25577e-5 * elevationM, 5.25588);
  }
}
