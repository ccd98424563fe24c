package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Escarameia's form, 0.61 + 0.56 √(sin θ), the constant from memory; worked by hand. */
class AirRemovalTest {

  @ParameterizedTest
  @CsvSource({"0, 0.61", "20, 0.9375", "30, 1.0060", "90, 1.17"})
  void agreesWithTheForm(double fallDegrees, double froude) {
    assertEquals(froude, AirRemoval.leastFroudeNumber(fallDegrees), 5e-5);
  }
}
