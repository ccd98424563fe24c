package rillwright.solver.network;

import java.util.List;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.water.Water;

/**
 * The wall of a pressure pipe.
 *
 * @param thicknessM m, greater than 0
 * @param elasticModulusPa short-term elastic modulus, Pa, greater than 0
 * @param ratedPressurePa pressure that it is made for where it is cool, Pa, greater than 0
 * @param warm share of that by temperature, the temperatures rising; copied
 */
public record PipeWall(
    double thicknessM, double elasticModulusPa, double ratedPressurePa, List<WhenWarm> warm) {
  /** Bulk modulus of water at 20 °C, Pa; of handbooks, from memory. */
  private static final double WATER_BULK_MODULUS_PA = 2.19e9;

  public PipeWall {
    Require.positive("thickness of a pipe's wall", thicknessM, "m");
    Require.positive("elastic modulus of a pipe's wall", elasticModulusPa, "Pa");
    Require.positive("pressure rating of a pipe", ratedPressurePa, "Pa");
    warm = Require.all("shares of a pressure rating", warm);
  }

  /**
   * Share of the rating that is left at a temperature.
   *
   * @param celsius °C
   * @param share 0 to 1
   */
  public record WhenWarm(double celsius, double share) {
    public WhenWarm {
      Require.finite("temperature of a pipe's wall", celsius, "°C");
      Require.between("share of a pressure rating", share, 0, 1, "");
    }
  }

  /** Pressure that it is made for at a temperature, Pa; straight between those that are known. */
  public double ratedPressureAt(double celsius) {
    double share = 1;
    for (int i = 0; i < warm.size(); i++) {
      WhenWarm here = warm.get(i);
      if (celsius <= here.celsius()) {
        if (i == 0) {
          return ratedPressurePa * here.share();
        }
        WhenWarm before = warm.get(i - 1);
        double way = (celsius - before.celsius()) / (here.celsius() - before.celsius());
        return ratedPressurePa * (before.share() + way * (here.share() - before.share()));
      }
      share = here.share();
    }
    return ratedPressurePa * share;
  }

  /**
   * Speed of a pressure wave in a thin-walled pipe full of water, m/s: a = √(K/ρ) / √(1 + K D/(E
   * e)).
   *
   * <p>Source: Korteweg 1878, as in Wylie and Streeter, Fluid Transients (from memory).
   */
  public double waveSpeedMPerS(Bore bore, Water water) {
    double compliance = WATER_BULK_MODULUS_PA * bore.diameterM() / (elasticModulusPa * thicknessM);
    return Math.sqrt(WATER_BULK_MODULUS_PA / water.densityKgPerM3() / (1 + compliance));
  }
}
