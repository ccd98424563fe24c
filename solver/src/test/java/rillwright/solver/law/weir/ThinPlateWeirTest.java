package rillwright.solver.law.weir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Draw;

class ThinPlateWeirTest implements WeirContract {

  @Override
  public Weir weir(SplittableRandom random) {
    double width = Draw.between(random, 0.1, 2);
    return new ThinPlateWeir(width, Draw.between(random, 0.05, 1), width);
  }

  /** Narrower than its channel, up to hardly any of it. */
  @Nested
  class Contracted implements WeirContract {
    @Override
    public Weir weir(SplittableRandom random) {
      double width = Draw.between(random, 0.1, 2);
      return new ThinPlateWeir(
          width, Draw.between(random, 0.05, 1), width * Draw.between(random, 1, 100));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.03, 0.1, 0.4, 60})
  void fullWidthFollowsItsFormula(double head) {
    double expected =
        (0.602 + 0.075 * head / 0.2)
            * 2
            / 3
            * Math.sqrt(2 * 9.80665)
            * (0.75 - 0.0009)
            * Math.pow(head + 0.001, 1.5);
    assertEquals(expected, new ThinPlateWeir(0.75, 0.2, 0.75).flowAt(head), 1e-14 * expected);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 0.002, 0.0099})
  void headAdditionIsTaperedBelowTenMillimetres(double head) {
    double s = head / 0.01;
    double he = head + 0.001 * s * (2 - s);
    double expected =
        (0.602 + 0.075 * head / 0.2)
            * 2
            / 3
            * Math.sqrt(2 * 9.80665)
            * (0.75 - 0.0009)
            * Math.pow(he, 1.5);
    assertEquals(expected, new ThinPlateWeir(0.75, 0.2, 0.75).flowAt(head), 1e-14 * expected);
  }

  /** Kindsvater and Carter's coefficients and width addition against b/B (from memory). */
  @ParameterizedTest(name = "b/B {0}")
  @CsvSource({
    "0.2, 0.589, -0.0018, 0.0024",
    "0.4, 0.591, 0.0058, 0.0027",
    "0.6, 0.593, 0.018, 0.0036",
    "0.7, 0.595, 0.030, 0.0041",
    "0.8, 0.597, 0.045, 0.0042",
    "0.9, 0.599, 0.064, 0.0031",
    "0.5, 0.592, 0.0119, 0.00315",
    "0.95, 0.6005, 0.0695, 0.0011"
  })
  void narrowerFollowsTheTableJoinedByStraightLines(
      double widthRatio, double base, double perHeadRatio, double widthAdditionM) {
    double expected =
        (base + perHeadRatio * 0.1 / 0.2)
            * 2
            / 3
            * Math.sqrt(2 * 9.80665)
            * (0.5 + widthAdditionM)
            * Math.pow(0.101, 1.5);
    assertEquals(
        expected, new ThinPlateWeir(0.5, 0.2, 0.5 / widthRatio).flowAt(0.1), 1e-12 * expected);
  }

  @Test
  void sheetAtTheBrinkIsEightyFivePerCentOfTheHead() {
    ThinPlateWeir weir = new ThinPlateWeir(0.75, 0.2, 0.75);
    assertEquals(0.85 * weir.headAt(0.004), weir.brinkDepthAt(0.004).orElseThrow(), 1e-16);
  }

  @Test
  void narrowNotchPassesLessThanAFullWidthOne() {
    double full = new ThinPlateWeir(0.5, 0.2, 0.5).flowAt(0.1);
    assertTrue(new ThinPlateWeir(0.5, 0.2, 1).flowAt(0.1) < full);
  }

  @ParameterizedTest
  @CsvSource({"0.001, 0.2, 1", "0.5, 0, 1", "0.5, 0.2, 0.4", "NaN, 0.2, 1", "0.5, NaN, 1"})
  void refusesWhatIsNoPlate(double width, double height, double channel) {
    assertThrows(IllegalArgumentException.class, () -> new ThinPlateWeir(width, height, channel));
  }
}
