package rillwright.solver.law.weir;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Weirs in print. Textbooks were read in published transcriptions of their examples. */
class PublishedWeirTest {
  private static final double FOOT_M = 0.3048;
  private static final double CUBIC_FOOT_M3 = FOOT_M * FOOT_M * FOOT_M;
  private static final double GPM_M3_PER_S = 3.785411784e-3 / 60;

  @ParameterizedTest(name = "{0} ft: {1} gpm")
  @CsvFileSource(
      resources = "/published/oregon-circular-550-v-notch.csv",
      useHeadersInDisplayName = true)
  void rightAngledNotchAgreesWithThePrintedTable(double headFt, double flowGpm, double share) {
    double flow = new VNotchWeir(90).flowAt(headFt * FOOT_M) / GPM_M3_PER_S;
    assertEquals(flowGpm, flow, share * flowGpm);
  }

  @ParameterizedTest(name = "{0} ft: {1} and {2} gpm")
  @CsvFileSource(
      resources = "/published/oregon-circular-550-rectangular.csv",
      useHeadersInDisplayName = true)
  void contractedPlateAgreesWithThePrintedTable(double headFt, double oneFoot, double twoFeet) {
    double head = headFt * FOOT_M;
    ThinPlateWeir one = new ThinPlateWeir(FOOT_M, 1, 100);
    ThinPlateWeir two = new ThinPlateWeir(2 * FOOT_M, 1, 100);
    assertEquals(oneFoot, one.flowAt(head) / GPM_M3_PER_S, 0.035 * oneFoot);
    assertEquals(twoFeet, two.flowAt(head) / GPM_M3_PER_S, 0.025 * twoFeet);
  }

  /**
   * V. M. Ponce, San Diego State University, V-notch laboratory page: Ce 0.578, k 0.88 mm, worked
   * out at 0.3 m (computed from the printed constants with g = 9.81).
   */
  @Test
  void rightAngledNotchAgreesWithPrintedConstants() {
    assertEquals(0.0678, new VNotchWeir(90).flowAt(0.3), 0.005 * 0.0678);
  }

  /**
   * Rehbock's formula of 1929, another one for the same weir: h 0.3 m, p 0.4 m, b 2 m: 0.6487 m³/s.
   * Two formulas for one weir differ by about 1 %.
   */
  @Test
  void fullWidthPlateAgreesWithRehbocksFormula() {
    assertEquals(0.6486856, new ThinPlateWeir(2, 0.4, 2).flowAt(0.3), 0.015 * 0.6486856);
  }

  /**
   * Constant discharge coefficients. Lal, Hydraulics, ex. 4.5, p. 108 (7.573 ft, 1.2 ft, Cd 0.62, g
   * = 32.2, which makes 0.04 %: 33.02 ft³/s); Subramanya, 1000 Solved Problems in Fluid Mechanics,
   * ex. 13.35, p. 334 (2.2 m less six contractions of 0.1 · 0.7 m, Cd 0.62), ex. 13.31, p. 333 (0.4
   * m, 0.1 m, 25 L/s: Cd 0.669).
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Lal ex. 4.5, 0.62, 2.3082504, 0.36576, 0.9350216, 0.0005",
    "Subramanya ex. 13.35, 0.62, 1.78, 0.7, 1.91, 0.005",
    "Subramanya ex. 13.31, 0.669, 0.4, 0.1, 0.025, 0.00002"
  })
  void dischargeCoefficientGivesThePrintedFlow(
      String source, double coefficient, double width, double head, double flow, double within) {
    PowerWeir weir = PowerWeir.ofDischargeCoefficient(coefficient, width);
    assertEquals(flow, weir.flowAt(head), within, source);
  }

  /**
   * Coefficients C, in customary or SI units. Lal, ex. 4.5 (Francis 3.33: 33.15 ft³/s); Paradise,
   * Problems in Hydraulics, ex. 5.6, p. 77 (3.09, 3.5 ft, 2.5 ft: 42.8 ft³/s before the approach is
   * counted); Douglas, Fluid Mechanics, ex. 6.7, p. 196 (1.84, 0.9 m, 0.25 m: 0.2070 m³/s before
   * it); Cipolletti's formula (from memory: 1.859, 1 m, 0.2 m: 0.1663 m³/s, computed).
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Lal ex. 4.5 (Francis), 3.33, ft, 7.573, 1.2, 33.15, 0.01",
    "Paradise ex. 5.6, 3.09, ft, 3.5, 2.5, 42.8, 0.1",
    "Douglas ex. 6.7, 1.84, m, 0.9, 0.25, 0.2070, 0.00005",
    "Cipolletti, 1.859, m, 1, 0.2, 0.1663, 0.00005"
  })
  void coefficientGivesThePrintedFlow(
      String source,
      double coefficient,
      String unit,
      double width,
      double head,
      double flow,
      double within) {
    double length = unit.equals("ft") ? FOOT_M : 1;
    PowerWeir weir =
        new PowerWeir(coefficient * Math.sqrt(length), width * length, BrinkRule.THIN_EDGE);
    double volume = unit.equals("ft") ? CUBIC_FOOT_M3 : 1;
    assertEquals(flow, weir.flowAt(head * length) / volume, within, source);
  }

  /** Daugherty and Franzini, ex. 12.4, p. 432: 3 ft²/s over 3.33: crest 3.07 ft under 4 ft. */
  @Test
  void printedCrestHeightLeavesTheHead() {
    PowerWeir weir = new PowerWeir(3.33 * Math.sqrt(FOOT_M), FOOT_M, BrinkRule.THIN_EDGE);
    assertEquals(4 - 3.07, weir.headAt(3 * CUBIC_FOOT_M3) / FOOT_M, 0.005);
  }
}
