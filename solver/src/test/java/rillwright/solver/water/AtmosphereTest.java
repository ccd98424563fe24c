package rillwright.solver.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmosphereTest {

  /** U.S. Standard Atmosphere, 1976, at geopotential heights (from memory). */
  @ParameterizedTest(name = "{0} m: {1} Pa")
  @CsvSource({"0, 101325", "500, 95461", "1000, 89875", "2000, 79495", "3000, 70109"})
  void agreesWithTheStandardAtmosphere(double elevationM, double pressurePa) {
    assertEquals(pressurePa, Atmosphere.pressurePa(elevationM), 1.5);
  }
}
