package rillwright.solver.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmosphereTest {

  /**
   * U.S. Standard Atmosphere, 1976, by geometric height (from memory; by the plain height in place
   * of the geopotential one they come out 6 Pa too low at 2,000 m and 20 Pa at 4,000 m).
   */
  @ParameterizedTest(name = "{0} m: {1} Pa")
  @CsvSource({
    "0, 101325",
    "500, 95461",
    "1000, 89876",
    "2000, 79501",
    "3000, 70121",
    "4000, 61660"
  })
  void agreesWithTheStandardAtmosphere(double elevationM, double pressurePa) {
    assertEquals(pressurePa, Atmosphere.pressurePa(elevationM), 1.5);
  }
}
