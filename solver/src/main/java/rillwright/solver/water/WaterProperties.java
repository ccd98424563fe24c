package rillwright.solver.water;

/** Published correlations for liquid water near atmospheric pressure. */
public final class WaterProperties {
  private static final double ZERO_CELSIUS_K = 273.15;

  private WaterProperties() {}

  /**
   * Density at 101.325 kPa, kg/m³.
   *
   * <p>Source: Tanaka, M., Girard, G., Davis, R., Peuto, A. and Bignell, N. (2001), "Recommended
   * table for the density of water between 0 °C and 40 °C based on recent experimental reports",
   * Metrologia 38, 301–309 (the paper was not seen; the library chemicals for Python, which cites
   * it, agrees within 0.0012 kg/m³).
   *
   * @param temperatureC °C, 0 to 40
   */
  public static double densityKgPerM3(double temperatureC) {
    double a = temperatureC - 3.983035;
    return 999.974950
        * (1 - a * a * (temperatureC + 301.797) / (522528.9 * (temperatureC + 69.34881)));
  }

  /**
   * Dynamic viscosity at 0.1 MPa, Pa·s.
   *
   * <p>Source: IAPWS SR6-08(2011), Revised supplementary release on properties of liquid water at
   * 0.1 MPa (the library chemicals for Python agrees within 0.003 %; the release's check values are
   * in the tests).
   *
   * @param temperatureC °C, −20 to 110
   */
  public static double dynamicViscosityPaS(double temperatureC) {
    double t = (temperatureC + ZERO_CELSIUS_K) / 300;
    return 1e-6
        * (280.68 * Math.pow(t, -1.9)
            + 511.45 * Math.pow(t, -7.7)
            + 61.131 * Math.pow(t, -19.6)
            + 0.45903 * Math.pow(t, -40));
  }

  /**
   * Vapour pressure, Pa.
   *
   * <p>Source: IAPWS R7-97(2012), Industrial Formulation 1997, equation 30 of region 4 (from
   * memory; its check value is in the tests).
   *
   * @param temperatureC °C, 0 to 370
   */
  public static double vapourPressurePa(double temperatureC) {
    double kelvin = temperatureC + ZERO_CELSIUS_K;
    double theta = kelvin - 0.23855557567849 / (kelvin - 0.65017534844798e3);
    double a = theta * theta + 0.11670521452767e4 * theta - 0.72421316703206e6;
    double b =
        -0.17073846940092e2 * theta * theta + 0.12020824702470e5 * theta - 0.32325550322333e7;
    double c = 0.14915108613530e2 * theta * theta - 0.48232657361591e4 * theta + 0.40511340542057e6;
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    return 1e6 * Math.pow(root, 4);
  }
}
