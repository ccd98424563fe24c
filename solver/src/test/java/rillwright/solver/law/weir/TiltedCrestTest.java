package rillwright.solver.law.weir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TiltedCrestTest implements WeirContract {

  @Override
  public Weir weir(SplittableRandom random) {
    Weir level = new PowerWeir(1.35 + 0.5 * random.nextDouble(), 0.6, BrinkRule.FREE_OVERFALL);
    return new TiltedCrest(level, TAPER_ENDS_M);
  }

  /** Q = C b/d · (2/5) (H^2.5 − (H − d)^2.5): the integral of C h^1.5 along the crest, by hand. */
  @ParameterizedTest
  @CsvSource({"0.03, 0.03", "0.03, 0.04", "0.01, 0.05", "0.03, 0.01"})
  void isTheIntegralAlongTheCrest(double drop, double head) {
    Weir tilted = new TiltedCrest(new PowerWeir(1.6, 0.61, BrinkRule.FREE_OVERFALL), drop);
    double above = Math.pow(head, 2.5) - Math.pow(Math.max(0, head - drop), 2.5);
    double expected = 1.6 * 0.61 / drop * 0.4 * above;
    assertEquals(expected, tilted.flowAt(head), 1e-13);
  }

  /** Trade notes: with 10 mm of water, 5 mm out of level gives 2.2 to 1 between the ends. */
  @Test
  void theLowEndCarriesMore() {
    Weir level = new PowerWeir(1.6, 0.61, BrinkRule.FREE_OVERFALL);
    assertEquals(2.2, level.flowAt(0.0125) / level.flowAt(0.0075), 0.05);
    Weir tilted = new TiltedCrest(level, 0.005);
    double flow = level.flowAt(0.010);
    assertTrue(tilted.rulerHeadAt(flow) < 0.010);
    assertEquals(0.010, tilted.rulerHeadAt(flow), 0.0002);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void refusesWhatIsNoDrop(double drop) {
    Weir level = new PowerWeir(1.6, 0.61, BrinkRule.FREE_OVERFALL);
    assertThrows(IllegalArgumentException.class, () -> new TiltedCrest(level, drop));
  }
}
