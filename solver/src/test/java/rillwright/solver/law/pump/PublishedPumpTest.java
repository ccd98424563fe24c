package rillwright.solver.law.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.SeriesLaw;
import rillwright.solver.law.curve.MonotoneCubic.Knot;
import rillwright.solver.law.filter.TwoTermLoss;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.TabulatedLoss;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpSet.Arrangement;

/** Pumps in print. Textbooks were read in published transcriptions of their examples. */
class PublishedPumpTest {
  private static final double FOOT_M = 0.3048;
  private static final double CUBIC_FOOT_M3 = FOOT_M * FOOT_M * FOOT_M;
  private static final double GPM_M3_PER_S = 3.785411784e-3 / 60;
  private static final double HORSEPOWER_W = 745.6998715822702;

  private static PumpSet one(PumpCurve curve, double speed) {
    return new PumpSet(curve, speed, 1, Arrangement.PARALLEL, Optional.empty());
  }

  /** Where the pumps' head is that of a lift and a system's loss, m³/s. */
  private static double operatingFlow(PumpSet pumps, double liftM, HeadLaw system) {
    return new BrentSolver(1e-14)
        .solve(
            1000,
            flow -> pumps.headAt(flow) - liftM - system.headLossAt(flow),
            0,
            pumps.publishedRangeM3PerS());
  }

  /**
   * Crane, Technical Paper 410, ex. 7.33: 400 gpm, 126 ft and 17.5 hp at 3500 rpm are 194.3 gpm,
   * 29.7 ft and 2.0 hp at 1700 rpm. The other point of the curve is invented.
   */
  @Test
  void slowerPumpFollowsThePrintedAffinity() {
    PumpCurve curve =
        new PumpCurve(
            List.of(
                new PumpPoint(0, 150 * FOOT_M, OptionalDouble.of(10 * HORSEPOWER_W)),
                new PumpPoint(
                    400 * GPM_M3_PER_S, 126 * FOOT_M, OptionalDouble.of(17.5 * HORSEPOWER_W))));
    PumpSet slower = one(curve, 1700.0 / 3500);
    assertEquals(194.3, slower.publishedRangeM3PerS() / GPM_M3_PER_S, 0.05);
    double flow = slower.publishedRangeM3PerS();
    assertEquals(29.7, slower.headAt(flow) / FOOT_M, 0.05);
    assertEquals(2.0, slower.powerAt(flow).orElseThrow() / HORSEPOWER_W, 0.05);
  }

  @ParameterizedTest(name = "{2} gpm: {3} ft")
  @CsvFileSource(
      resources = "/published/hydraulic-institute-affinity.csv",
      useHeadersInDisplayName = true)
  void slowerPumpFollowsThePrintedTable(
      double flow1740, double head1740, double flow1566, double head1566) {
    double[] heads = {213, 206, 198, 190, 183, 176, 168, 159, 147, 135, 117};
    List<PumpPoint> sheet = new ArrayList<>();
    for (int i = 0; i < heads.length; i++) {
      sheet.add(new PumpPoint(200 * i * GPM_M3_PER_S, heads[i] * FOOT_M, OptionalDouble.empty()));
    }
    PumpCurve curve = new PumpCurve(sheet);
    assertEquals(head1740, curve.headAt(flow1740 * GPM_M3_PER_S) / FOOT_M, 1e-9);
    PumpSet slower = one(curve, 1566.0 / 1740);
    assertEquals(head1566, slower.headAt(flow1566 * GPM_M3_PER_S) / FOOT_M, 0.5);
  }

  /**
   * Schaschke, Fluid Mechanics: Worked Examples for Engineers, ex. 9.10, p. 255: the sheet against
   * 10 m + 5.42e5 Q² runs at 6.6 L/s and 34 m (read off a chart). For a quarter less flow it turns
   * at 981 of 1200 rpm (computed by the affinity laws; the source scales at unequal flows).
   */
  @Test
  void pumpRunsWhereItsCurveCrossesThePrintedSystem() {
    PumpCurve curve = PumpCurveTest.curve("0:40 2:39.5 4:38 6:35 8:30 10:20");
    TwoTermLoss system = new TwoTermLoss(0, 5.42e5);
    double flow = operatingFlow(one(curve, 1), 10, system);
    assertEquals(0.0066, flow, 0.015 * 0.0066);
    assertEquals(34, curve.headAt(flow), 0.015 * 34);
    double wanted = 0.75 * 0.0066;
    double speed =
        new BrentSolver(1e-12)
            .solve(
                1000, n -> one(curve, n).headAt(wanted) - 10 - system.headLossAt(wanted), 0.5, 1);
    assertEquals(981, 1200 * speed, 3);
  }

  /**
   * Brasch and Whyman, Problems in Fluid Flow, ex. 6.3, p. 120: a smooth pipe of 114 mm and 60 m
   * with its exit, lift 8.75 m: 33.6 L/s at 13.10 m. The source takes Blasius's factor 0.3164
   * Re^−¼, which makes the loss grow with the flow to the 1.75th; viscosity taken as 1e-6 m²/s.
   */
  @Test
  void pumpOnASmoothPipe() {
    PumpCurve curve = PumpCurveTest.curve("0:20.63 10:19.99 20:17.80 30:14.46 40:10.33 50:5.71");
    Bore bore = new Bore(0.114);
    double reynolds = bore.velocityAt(0.03) * 0.114 / 1e-6;
    double loss = 0.3164 * Math.pow(reynolds, -0.25) * 60 / 0.114 * bore.velocityHeadAt(0.03);
    HeadLaw system =
        new SeriesLaw(List.of(new PowerLoss(loss, 0.03, 1.75), new VelocityHeadLoss(1, bore)));
    double flow = operatingFlow(one(curve, 1), 8.75, system);
    assertEquals(0.0336, flow, 0.01 * 0.0336);
    assertEquals(13.10, curve.headAt(flow), 0.01 * 13.10);
  }

  /** The same, ex. 6.4, p. 123: the same pump on another system, given by points: 33.4 L/s. */
  @Test
  void pumpOnATabulatedSystem() {
    PumpCurve curve = PumpCurveTest.curve("0:20.63 10:19.99 20:17.80 30:14.46 40:10.33 50:5.71");
    HeadLaw system =
        TabulatedLoss.through(
            List.of(
                new Knot(0.01, 0.304),
                new Knot(0.02, 1.035),
                new Knot(0.03, 2.122),
                new Knot(0.04, 3.535),
                new Knot(0.05, 5.252)));
    assertEquals(0.0334, operatingFlow(one(curve, 1), 10.4, system), 0.01 * 0.0334);
  }

  /**
   * Computed from a published problem: 365 − 20 Q² ft (Q in ft³/s) on a lift of 290 ft and 26.351
   * ft/(ft³/s)². One pump 1.272 ft³/s, two in series 2.575, two in parallel 1.547, by algebra.
   */
  @ParameterizedTest
  @CsvSource({"1, PARALLEL, 1.272", "2, SERIES, 2.575", "2, PARALLEL, 1.547"})
  void twoPumpsAlike(int count, Arrangement arrangement, double flowFt3PerS) {
    List<PumpPoint> sheet = new ArrayList<>();
    for (double flow = 0; flow <= 4; flow += 0.1) {
      sheet.add(
          new PumpPoint(
              flow * CUBIC_FOOT_M3, (365 - 20 * flow * flow) * FOOT_M, OptionalDouble.empty()));
    }
    PumpSet pumps = new PumpSet(new PumpCurve(sheet), 1, count, arrangement, Optional.empty());
    HeadLaw system = new TwoTermLoss(0, 26.351 * FOOT_M / (CUBIC_FOOT_M3 * CUBIC_FOOT_M3));
    double flow = operatingFlow(pumps, 290 * FOOT_M, system) / CUBIC_FOOT_M3;
    assertEquals(flowFt3PerS, flow, 0.002 * flowFt3PerS);
  }
}
