package rillwright.solver.law.weir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Draw;

class PowerWeirTest implements WeirContract {

  @Override
  public Weir weir(SplittableRandom random) {
    return new PowerWeir(
        Draw.between(random, 1.2, 1.9), Draw.between(random, 0.1, 3), BrinkRule.FREE_OVERFALL);
  }

  @Test
  void dischargeCoefficientIsTwoThirdsOfTheRootOfTwoG() {
    PowerWeir weir = PowerWeir.ofDischargeCoefficient(0.6, 0.75);
    double expected = 2.0 / 3 * 0.6 * 0.75 * Math.sqrt(2 * 9.80665) * Math.pow(0.02, 1.5);
    assertEquals(expected, weir.flowAt(0.02), 1e-16);
  }

  /** Rouse (1936, from memory): the depth at the brink is 0.715 of the critical depth. */
  @Test
  void freeOverfallIsThinnerThanCriticalDepth() {
    PowerWeir weir = new PowerWeir(1.6, 0.5, BrinkRule.FREE_OVERFALL);
    double perWidth = 0.004 / 0.5;
    assertEquals(
        0.715 * Math.cbrt(perWidth * perWidth / 9.80665),
        weir.brinkDepthAt(0.004).orElseThrow(),
        1e-16);
    assertEquals(0, weir.brinkDepthAt(0).orElseThrow());
  }

  @Test
  void thinEdgeKeepsEightyFivePerCentOfTheHead() {
    PowerWeir weir = PowerWeir.ofDischargeCoefficient(0.62, 0.5);
    assertEquals(0.85 * weir.headAt(0.004), weir.brinkDepthAt(0.004).orElseThrow(), 1e-16);
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "1.6, 0", "-1.6, 1", "NaN, 1", "1.6, NaN", "1.6, Infinity"})
  void refusesWhatIsNoCrest(double coefficient, double width) {
    assertThrows(
        IllegalArgumentException.class,
        () -> new PowerWeir(coefficient, width, BrinkRule.THIN_EDGE));
  }
}
