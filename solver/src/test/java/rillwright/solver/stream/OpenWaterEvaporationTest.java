package rillwright.solver.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rillwright.solver.water.Water;

class OpenWaterEvaporationTest {
  private static final double MM_PER_DAY = 1e-3 / 86400;

  /**
   * Worked sheet on Meyer's formula as given by Subramanya, Engineering Hydrology, eq. 3.3: water
   * and air at 20 °C, humidity 40 %, wind 16 km/h at 1 m, which is 16 · 9^(1/7) = 21.9 km/h at 9 m;
   * K = 0.36: 8.97 mm/day.
   */
  @Test
  void isAsOnTheWorkedSheet() {
    double wind = 16 * Math.pow(9, 1.0 / 7) / 3.6;
    double rate =
        OpenWaterEvaporation.rateMPerS(
            OpenWaterEvaporation.LARGE_WATER, Water.at(20).vapourPressurePa(), 20, 0.4, wind);
    assertEquals(8.97, rate / MM_PER_DAY, 0.02);
  }

  @Test
  void damperAirThanTheWaterTakesNothing() {
    assertEquals(
        0,
        OpenWaterEvaporation.rateMPerS(
            OpenWaterEvaporation.SMALL_WATER, Water.at(5).vapourPressurePa(), 30, 0.9, 2));
  }
}
