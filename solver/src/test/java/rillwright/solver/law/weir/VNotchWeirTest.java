package rillwright.solver.law.weir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VNotchWeirTest implements WeirContract {

  @Override
  public Weir weir(SplittableRandom random) {
    return new VNotchWeir(20 + 100 * random.nextDouble());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.05, 0.2})
  void rightAngleFollowsItsFormula(double head) {
    double expected = 8.0 / 15 * 0.578 * Math.sqrt(2 * 9.80665) * Math.pow(head + 0.00085, 2.5);
    assertEquals(expected, new VNotchWeir(90).flowAt(head), 1e-14 * expected);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0001, 0.002, 0.009})
  void headAdditionIsTaperedBelowTenMillimetres(double head) {
    double s = head / 0.01;
    double he = head + 0.00085 * s * (2 - s);
    double expected = 8.0 / 15 * 0.578 * Math.sqrt(2 * 9.80665) * Math.pow(he, 2.5);
    assertEquals(expected, new VNotchWeir(90).flowAt(head), 1e-14 * expected);
  }

  /**
   * Ce and kh (mm) by Shen's curves as Blevins prints them (Applied Fluid Dynamics Handbook; seen
   * in the library fluids 1.3.1): two figures each, so 1.5 % of the flow from 20 mm on.
   */
  @ParameterizedTest(name = "{0}°: {1}, {2} mm")
  @CsvSource({"40, 0.58, 1.7", "60, 0.575, 1.2", "80, 0.575, 1.0", "100, 0.58, 1.0"})
  void otherAnglesHaveCoefficientsOfTheirOwn(double degrees, double ce, double khMm) {
    for (double head : new double[] {0.02, 0.05, 0.2}) {
      double he = head + khMm / 1000;
      double printed =
          8.0
              / 15
              * ce
              * Math.tan(Math.toRadians(degrees / 2))
              * Math.sqrt(2 * 9.80665)
              * Math.pow(he, 2.5);
      assertEquals(printed, new VNotchWeir(degrees).flowAt(head), 0.015 * printed, head + " m");
    }
  }

  /** The right angle's own constants lie within 0.5 % of the polynomials beside it. */
  @Test
  void rightAngleAgreesWithItsNeighbours() {
    double beside = (new VNotchWeir(89.999).flowAt(0.02) + new VNotchWeir(90.001).flowAt(0.02)) / 2;
    assertEquals(beside, new VNotchWeir(90).flowAt(0.02), 0.005 * beside);
  }

  /** Beyond the tested angles only the tangent goes on. */
  @ParameterizedTest
  @CsvSource({"25, 10", "100, 130"})
  void coefficientsStayBeyondTheTestedAngles(double tested, double beyond) {
    double ratio = Math.tan(Math.toRadians(beyond / 2)) / Math.tan(Math.toRadians(tested / 2));
    double expected = ratio * new VNotchWeir(tested).flowAt(0.05);
    assertEquals(expected, new VNotchWeir(beyond).flowAt(0.05), 1e-12 * expected);
  }

  @Test
  void sheetAtTheBrinkOfANotchIsNotReported() {
    assertEquals(OptionalDouble.empty(), new VNotchWeir(90).brinkDepthAt(0.001));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 180, -90, Double.NaN})
  void refusesWhatIsNoNotch(double angle) {
    assertThrows(IllegalArgumentException.class, () -> new VNotchWeir(angle));
  }
}
