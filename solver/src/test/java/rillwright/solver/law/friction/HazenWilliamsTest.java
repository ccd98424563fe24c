package rillwright.solver.law.friction;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Draw;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.Trial;

class HazenWilliamsTest implements SameBothWaysContract {
  private static final double GPM_M3_PER_S = 3.785411784e-3 / 60;
  private static final double INCH_M = 0.0254;
  private static final double FOOT_M = 0.3048;

  @Override
  public Trial trial(SplittableRandom random) {
    Bore bore = Draw.bore(random);
    return Trial.inOnePiece(
        new HazenWilliams(Draw.between(random, 0.1, 500), bore, Draw.between(random, 60, 155)),
        Draw.usualFlowM3PerS(bore));
  }

  @ParameterizedTest(name = "{0} in, {2} gpm")
  @CsvFileSource(
      resources = "/published/illinois-77-906-exhibit-i.csv",
      useHeadersInDisplayName = true)
  void agreesWithThePrintedTable(
      String nominalIn, double insideIn, double flowGpm, double lossFtPer100Ft) {
    HazenWilliams pipe = new HazenWilliams(100 * FOOT_M, new Bore(insideIn * INCH_M), 150);
    double lossFt = pipe.headLossAt(flowGpm * GPM_M3_PER_S) / FOOT_M;
    double tolerance = lossFtPer100Ft > 1 ? 0.015 : 0.025;
    assertEquals(lossFtPer100Ft, lossFt, tolerance * lossFtPer100Ft, nominalIn);
  }

  /** Computed apart: 10.67 · 100 · 0.001^1.852/(150^1.852 · 0.0525^4.8704). */
  @Test
  void agreesWithTheFormulaWorkedByHand() {
    HazenWilliams pipe = new HazenWilliams(100, new Bore(0.0525), 150);
    assertEquals(0.473565, pipe.headLossAt(0.001), 1e-6);
  }

  /**
   * Computed: the customary form 1044 Q^1.852/(C^1.852 d^4.8704), in ft per 100 ft with gpm and
   * inches, whose rounded constant differs from 10.67 by 0.2 %.
   */
  @Test
  void agreesWithTheCustomaryForm() {
    double customaryFt =
        1044 * Math.pow(15.850, 1.852) / Math.pow(150, 1.852) / Math.pow(2.067, 4.8704) * 3.2808;
    HazenWilliams pipe = new HazenWilliams(328.08 * FOOT_M, new Bore(2.067 * INCH_M), 150);
    assertEquals(customaryFt, pipe.headLossAt(15.850 * GPM_M3_PER_S) / FOOT_M, 0.003 * customaryFt);
  }

  @Seeded
  void frictionFactorGivesTheLossBack(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Bore bore = Draw.bore(random);
    double length = Draw.between(random, 0.1, 500);
    HazenWilliams pipe = new HazenWilliams(length, bore, 140);
    double flow = -Draw.between(random, 0.01, 3) * bore.areaM2();
    double loss =
        pipe.darcyFrictionFactorAt(flow) * (length / bore.diameterM()) * bore.velocityHeadAt(flow);
    assertEquals(Math.abs(pipe.headLossAt(flow)), loss, 1e-13 * loss, "seed " + seed);
  }

  @Test
  void frictionFactorDoesNotNeedALength() {
    Bore bore = new Bore(0.05);
    assertEquals(
        new HazenWilliams(1, bore, 150).darcyFrictionFactorAt(0.002),
        new HazenWilliams(0, bore, 150).darcyFrictionFactorAt(0.002),
        1e-15);
  }
}
