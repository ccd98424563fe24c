package rillwright.solver.law.weir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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

  @Test
  void flowGrowsWithTheTangentOfHalfTheAngle() {
    double right = new VNotchWeir(90).flowAt(0.1);
    assertEquals(right / Math.sqrt(3), new VNotchWeir(60).flowAt(0.1), 1e-14 * right);
  }

  @Test
  void sheetAtTheLipOfANotchIsNotTold() {
    assertEquals(OptionalDouble.empty(), new VNotchWeir(90).brinkDepthAt(0.001));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 180, -90, Double.NaN})
  void refusesWhatIsNoNotch(double angle) {
    assertThrows(IllegalArgumentException.class, () -> new VNotchWeir(angle));
  }
}
