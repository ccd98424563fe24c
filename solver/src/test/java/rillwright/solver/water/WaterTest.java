package rillwright.solver.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WaterTest {

  /** Check values of the formula: IAPWS SR6-08(2011), Table 8, p. 11. */
  @ParameterizedTest(name = "{0} K: {1} µPa·s")
  @CsvSource({"260, 3058.36075", "298.15, 889.996774", "375, 276.207245"})
  void viscosityMeetsItsCheckValues(double kelvin, double microPascalSeconds) {
    assertEquals(
        microPascalSeconds,
        1e6 * WaterProperties.dynamicViscosityPaS(kelvin - 273.15),
        5e-9 * microPascalSeconds);
  }

  /** The same table at 298.15 K; the density formula is another one, good to a few parts in 1e6. */
  @Test
  void densityAgreesWithTheCheckValueOfAnotherFormula() {
    assertEquals(997.047013, WaterProperties.densityKgPerM3(25), 0.001);
  }

  /** Check value of the formula: IAPWS R7-97(2012), Table 35. */
  @Test
  void vapourPressureMeetsItsCheckValue() {
    assertEquals(3536.58941, WaterProperties.vapourPressurePa(300 - 273.15), 5e-6);
  }

  @ParameterizedTest(name = "{0} °C")
  @CsvFileSource(
      resources = "/published/hydraulic-institute-water.csv",
      useHeadersInDisplayName = true)
  void agreesWithThePrintedTable(double temperatureC, double density, double vapourPressure) {
    Water water = Water.at(temperatureC);
    // The table is for water at its own vapour pressure: 0.05 kg/m³ less than in air.
    assertEquals(density + 0.05, water.densityKgPerM3(), 0.01);
    assertEquals(vapourPressure, water.vapourPressurePa(), 0.001 * vapourPressure);
  }

  @ParameterizedTest(name = "{0} °C")
  @CsvFileSource(resources = "/computed/iapws-95.csv", useHeadersInDisplayName = true)
  void agreesWithTheFullEquationOfState(
      double temperatureC, double density, double viscosityMm2PerS) {
    Water water = Water.at(temperatureC);
    assertEquals(density, water.densityKgPerM3(), 0.001 + 0.0005);
    assertEquals(viscosityMm2PerS, 1e6 * water.kinematicViscosityM2PerS(), 0.0001);
  }

  /** Munson, Young and Okiishi, ex. 12.3, p. 702 (read in a transcription): water at 80 °F. */
  @Test
  void agreesWithATextbookAtEightyFahrenheit() {
    Water water = Water.at((80 - 32) / 1.8);
    double poundPerCubicFoot = 4.4482216152605 / Math.pow(0.3048, 3);
    assertEquals(62.22, water.densityKgPerM3() * 9.80665 / poundPerCubicFoot, 0.01);
    assertEquals(0.5069, water.vapourPressurePa() / 6894.757293168361, 0.002 * 0.5069);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 40.1, Double.NaN})
  void refusesTemperaturesOutsideItsCorrelations(double temperatureC) {
    assertThrows(IllegalArgumentException.class, () -> Water.at(temperatureC));
  }

  @ParameterizedTest
  @CsvSource({"0, 1e-6, 2000", "998, 0, 2000", "998, 1e-6, -1", "NaN, 1e-6, 0", "998, NaN, 0"})
  void refusesWhatIsNoWater(double density, double viscosity, double vapourPressure) {
    assertThrows(
        IllegalArgumentException.class, () -> new Water(density, viscosity, vapourPressure));
  }
}
