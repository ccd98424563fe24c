package rillwright.solver.stream;

import rillwright.solver.water.WaterProperties;

/**
 * Evaporation of open water: E = K (e_w − e_a)(1 + u/16), mm/day, with the vapour pressures at the
 * water's temperature and in the air in mm of mercury and the wind about 9 m above the ground in
 * km/h.
 *
 * <p>Source: Meyer, A. F. (1915), as given by Subramanya, K., Engineering Hydrology, eq. 3.3: K =
 * 0.36 for large deep waters, 0.50 for small shallow ones, which garden ponds are.
 */
public final class OpenWaterEvaporation {
  /** K of small shallow water, mm/day for each mm of mercury. */
  public static final double SMALL_WATER = 0.50;

  /** K of large deep water. */
  public static final double LARGE_WATER = 0.36;

  private static final double PA_PER_MM_OF_MERCURY = 133.322;
  private static final double KM_PER_H = 1 / 3.6;
  private static final double MM_PER_DAY = 1e-3 / 86400;
  private static final double WIND_SCALE_KM_PER_H = 16;

  private OpenWaterEvaporation() {}

  /**
   * Depth that evaporates in a second, m/s, 0 or more: none where the air is damper than that.
   *
   * @param coefficient K
   * @param atWaterPa vapour pressure at the temperature of the water, Pa
   * @param airC temperature of the air, °C, 0 to 60
   * @param humidity of the air, share, 0 to 1
   * @param windMPerS m/s, 0 or more
   */
  public static double rateMPerS(
      double coefficient, double atWaterPa, double airC, double humidity, double windMPerS) {
    double atWater = atWaterPa / PA_PER_MM_OF_MERCURY;
    double inAir = humidity * WaterProperties.vapourPressurePa(airC) / PA_PER_MM_OF_MERCURY;
    double wind = windMPerS / KM_PER_H;
    double daily = coefficient * (atWater - inAir) * (1 + wind / WIND_SCALE_KM_PER_H);
    return Math.max(0, daily) * MM_PER_DAY;
  }
}
