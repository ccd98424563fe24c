package rillwright.solver.water;

import rillwright.solver.invariant.Require;

/**
 * Fresh water as the network carries it.
 *
 * @param densityKgPerM3 kg/m³, greater than 0
 * @param kinematicViscosityM2PerS m²/s, greater than 0
 * @param vapourPressurePa pressure at which it boils, Pa, 0 or more
 */
public record Water(
    double densityKgPerM3, double kinematicViscosityM2PerS, double vapourPressurePa) {
  /** Temperature taken where none is given, °C; common practice. */
  public static final double USUAL_TEMPERATURE_C = 20;

  /** Least and greatest temperature at which the correlations hold, °C. */
  public static final double LEAST_TEMPERATURE_C = 0;

  public static final double GREATEST_TEMPERATURE_C = 40;

  public Water {
    Require.positive("density", densityKgPerM3, "kg/m³");
    Require.positive("viscosity", kinematicViscosityM2PerS, "m²/s");
    Require.atLeast("vapour pressure", vapourPressurePa, 0, "Pa");
  }

  /**
   * Water at a temperature and at atmospheric pressure.
   *
   * @param temperatureC °C, 0 to 40
   * @throws IllegalArgumentException outside that range; no extrapolation
   */
  public static Water at(double temperatureC) {
    if (!(temperatureC >= LEAST_TEMPERATURE_C && temperatureC <= GREATEST_TEMPERATURE_C)) {
      throw new IllegalArgumentException(
          "water temperature is " + temperatureC + " °C; it must be 0 to 40 °C");
    }
    double density = WaterProperties.densityKgPerM3(temperatureC);
    return new Water(
        density,
        WaterProperties.dynamicViscosityPaS(temperatureC) / density,
        WaterProperties.vapourPressurePa(temperatureC));
  }

  /** Its temperature, °C, 0 to 40: that at which water boils under its vapour pressure. */
  public double temperatureC() {
    double low = LEAST_TEMPERATURE_C;
    double high = GREATEST_TEMPERATURE_C;
    while (high - low > 1e-6) {
      double middle = (low + high) / 2;
      boolean cooler = WaterProperties.vapourPressurePa(middle) < vapourPressurePa;
      low = cooler ? middle : low;
      high = cooler ? high : middle;
    }
    return low;
  }
}
