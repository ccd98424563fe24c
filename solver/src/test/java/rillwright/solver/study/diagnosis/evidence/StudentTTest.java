package rillwright.solver.study.diagnosis.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {

  /** Quantiles of any printed table of Student's t, 7 degrees of freedom (from memory). */
  @ParameterizedTest
  @CsvSource({"0.95, 1.895", "0.975, 2.365", "0.99, 2.998", "0.995, 3.499", "0.5, 0"})
  void hasThePublishedQuantiles(double probability, double quantile) {
    assertEquals(probability, StudentT.below(quantile), 1e-4);
    assertEquals(1 - probability, StudentT.below(-quantile), 1e-4);
  }

  @ParameterizedTest
  @CsvSource({"-4", "-1", "0", "0.5", "3"})
  void densityIsTheDerivativeAndTheLogarithmIsItsLogarithm(double z) {
    double slope = (StudentT.below(z + 1e-5) - StudentT.below(z - 1e-5)) / 2e-5;
    assertEquals(slope, StudentT.density(z), 1e-9);
    assertEquals(Math.log(StudentT.density(z)), StudentT.logDensity(z), 1e-12);
  }
}
