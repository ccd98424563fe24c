package rillwright.solver.study.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What quantities may be. */
class DistributionTest {

  @ParameterizedTest(name = "{0}")
  @ValueSource(doubles = {1e-6, 0.025, 0.2, 0.5, 0.7, 0.975, 0.999999})
  void farFromItsBoundsANormalQuantityIsNormal(double chance) {
    double expected = new NormalDistribution(18.3, 0.75).inverseCumulativeProbability(chance);
    assertEquals(expected, new CutNormal(18.3, 0.75, 0, 1e9).quantile(chance), 1e-6);
  }

  @Test
  void halfTheWidthOf95PerCentIsNearlyTwoStandardDeviations() {
    // Φ⁻¹(0.975) = 1.959964: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 (from
    // memory)
    assertEquals(1.959964, new CutNormal(0, 1, -100, 100).quantile(0.975), 1e-6);
  }

  /**
   * Cut off at its own middle, what is left is half a normal: below its quantile at p lies p/2 more
   * than half of the whole normal.
   */
  @ParameterizedTest(name = "{0}")
  @ValueSource(doubles = {0.001, 0.3, 0.5, 0.9})
  void cutOffAtItsMiddleItIsHalfANormal(double chance) {
    double expected = new NormalDistribution(0, 0.1).inverseCumulativeProbability(0.5 + chance / 2);
    assertEquals(expected, new CutNormal(0, 0.1, 0, 1).quantile(chance), 1e-9);
  }

  @ParameterizedTest(name = "{0} ± {1} in {2} .. {3}")
  @CsvSource({"0.02, 0.2, 0, 1", "0.99, 0.05, 0, 1", "1e-12, 5, 1e-12, 1e9", "0, 1, -1e9, 0"})
  void nothingLiesBeyondWhatIsValid(double middle, double deviation, double least, double most) {
    CutNormal cut = new CutNormal(middle, deviation, least, most);
    double before = least;
    for (double chance = 1e-7; chance < 1; chance += 1e-3) {
      double value = cut.quantile(chance);
      assertTrue(value >= before && value <= most, "at " + chance + ": " + value);
      before = value;
    }
  }

  @Test
  void anEvenSpreadIsStraight() {
    EvenDistribution even = new EvenDistribution(2, 6);
    assertEquals(3, even.quantile(0.25), 1e-15);
    assertEquals(5.96, even.quantile(0.99), 1e-14);
  }

  @Test
  void anEvenSpreadAboutAMiddleHasHalfItsChancesOnEitherSide() {
    EvenDistribution even = new EvenDistribution(2, 3, 7);
    assertEquals(2.2, even.quantile(0.1), 1e-14);
    assertEquals(3, even.quantile(0.5), 0);
    assertEquals(6.2, even.quantile(0.9), 1e-14);
    assertEquals(2, new EvenDistribution(2, 2, 6).quantile(0.25), 0);
    assertThrows(IllegalArgumentException.class, () -> new EvenDistribution(2, 8, 6));
  }

  @Test
  void whatIsNoSpreadIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new EvenDistribution(2, 2));
    assertThrows(IllegalArgumentException.class, () -> new EvenDistribution(2, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new CutNormal(2, 0, 0, 3));
    assertThrows(IllegalArgumentException.class, () -> new CutNormal(4, 1, 0, 3));
  }
}
