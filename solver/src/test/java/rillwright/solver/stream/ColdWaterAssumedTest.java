package rillwright.solver.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.finding.Finding;
import rillwright.solver.water.WaterProperties;

/** Hot air over water of which nobody says how warm it is. */
class ColdWaterAssumedTest {

  private static double meyer(double waterC, double airC, double humidity) {
    return OpenWaterEvaporation.rateMPerS(
        OpenWaterEvaporation.SMALL_WATER,
        WaterProperties.vapourPressurePa(waterC),
        airC,
        humidity,
        0);
  }

  /**
   * Meyer's formula without wind goes with e_w - e_a. Vapour pressures as tabled in steam tables:
   * 2.339 kPa at 20 °C, 5.627 kPa at 35 °C; at 30 % humidity (2.339 - 1.688)/(5.627 - 1.688) =
   * 0.165.
   */
  @Test
  void daysShrinkAsTheVapourPressuresSay() {
    WaterLoss loss =
        new WaterLoss(meyer(20, 35, 0.3), true, OptionalDouble.of(meyer(35, 35, 0.3)), 0);
    Finding finding = loss.coldWaterAssumed().orElseThrow();
    assertEquals("water-temperature-assumed", finding.code());
    assertEquals((2.339 - 0.3 * 5.627) / (0.7 * 5.627), finding.figures().get(2).value(), 0.002);
    assertTrue(loss.evaporationMPerDay() > 0);
  }

  @Test
  void nothingIsSaidWhereItIsKnownOrHardlyMatters() {
    assertEquals(Optional.empty(), new WaterLoss(meyer(20, 35, 0.3), true, 0).coldWaterAssumed());
    assertEquals(
        Optional.empty(),
        new WaterLoss(meyer(20, 21, 0.3), true, OptionalDouble.of(meyer(21, 21, 0.3)), 0)
            .coldWaterAssumed());
    assertEquals(
        Optional.empty(),
        new WaterLoss(0, true, OptionalDouble.of(meyer(35, 35, 0.9)), 0).coldWaterAssumed());
  }
}
