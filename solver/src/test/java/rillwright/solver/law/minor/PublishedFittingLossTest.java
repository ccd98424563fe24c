package rillwright.solver.law.minor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.SeriesLaw;
import rillwright.solver.law.friction.FixedFactor;

/**
 * Losses of fittings and of single lines in print. Textbooks were read in published transcriptions
 * of their examples.
 */
class PublishedFittingLossTest {
  private static final double FOOT_M = 0.3048;
  private static final double INCH_M = 0.0254;
  private static final double GPM_M3_PER_S = 3.785411784e-3 / 60;

  /**
   * Sudden enlargements, K = (1 − A₁/A₂)² on the smaller bore (Borda and Carnot). Subramanya, 1000
   * Solved Problems in Fluid Mechanics, ex. 11.1, p. 238 (9.79 kN/m³; 20 to 21.73 kPa); Natarajan,
   * Principles of Fluid Mechanics, ex. 7.11, p. 270 (1.22 kN/m²).
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Subramanya ex. 11.1, 450, 0.06, 0.09, 9790, 1730, 10",
    "Natarajan ex. 7.11, 100, 0.025, 0.072, 9806.65, 1220, 5"
  })
  void pressureRegainedBehindAnEnlargement(
      String source,
      double litresPerMinute,
      double boreM,
      double widerM,
      double weightNPerM3,
      double regainPa,
      double within) {
    double flow = litresPerMinute / 60000;
    Bore bore = new Bore(boreM);
    Bore wider = new Bore(widerM);
    double loss = VelocityHeadLoss.ofChange(bore, wider).headLossAt(flow);
    double regain = bore.velocityHeadAt(flow) - wider.velocityHeadAt(flow) - loss;
    assertEquals(regainPa, weightNPerM3 * regain, within, source);
  }

  /** Cengel and Cimbala (2006), ex. 8-6, p. 370: K 0.133 at 7 m/s, printed 0.33 m. */
  @Test
  void gradualEnlargement() {
    Bore bore = new Bore(0.06);
    assertEquals(0.33, new VelocityHeadLoss(0.133, bore).headLossAt(7 * bore.areaM2()), 0.005);
  }

  /** Crane, Technical Paper 410, ex. 7.35: K 0.325 on 400 gpm in 4.026 in: 0.513 ft. */
  @Test
  void runOfAConvergingTee() {
    VelocityHeadLoss run = new VelocityHeadLoss(0.325, new Bore(4.026 * INCH_M));
    assertEquals(0.513, run.headLossAt(400 * GPM_M3_PER_S) / FOOT_M, 0.0006);
  }

  /**
   * Fox and McDonald, Introduction to Fluid Mechanics, ex. 5, p. 352: 8.4 L/s through 100 m of 75
   * mm, f 0.017, entrance 0.5, exit 1: 4.46 m (with g = 9.8).
   */
  @Test
  void pipeWithItsEnds() {
    Bore bore = new Bore(0.075);
    HeadLaw line =
        new SeriesLaw(
            List.of(
                new VelocityHeadLoss(0.5, bore),
                new FixedFactor(100, bore, 0.017),
                new VelocityHeadLoss(1, bore)));
    assertEquals(4.46, line.headLossAt(0.0084), 0.01);
  }

  /** Natarajan, ex. 7.13, p. 277: 9 m of head on ΣK 168.23 in 30 cm: 0.072 m³/s. */
  @Test
  void flowThroughManyFittings() {
    VelocityHeadLoss line = new VelocityHeadLoss(168.23, new Bore(0.3));
    assertTrue(line.headLossAt(0.0715) < 9);
    assertTrue(line.headLossAt(0.0725) > 9);
  }

  /**
   * Hydraulic Institute, Engineering Data Book, System curves, worked example: 1255 ft of 4.026 in,
   * f 0.02, ΣK 3.79, static 265 ft.
   */
  @ParameterizedTest(name = "{0} gpm: {1} ft")
  @CsvSource({"0, 265", "100, 273", "200, 296", "300, 335"})
  void systemHead(double flowGpm, double headFt) {
    Bore bore = new Bore(4.026 * INCH_M);
    HeadLaw system =
        new SeriesLaw(
            List.of(new FixedFactor(1255 * FOOT_M, bore, 0.02), new VelocityHeadLoss(3.79, bore)));
    assertEquals(headFt, 265 + system.headLossAt(flowGpm * GPM_M3_PER_S) / FOOT_M, 0.5);
  }
}
