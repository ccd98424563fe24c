package rillwright.solver.law.weir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import rillwright.solver.law.Draw;
import rillwright.solver.law.HeadLawContract;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.Trial;

/** What every weir promises, itself and as a head law. */
interface WeirContract extends HeadLawContract {
  double TAPER_ENDS_M = 0.010;

  Weir weir(SplittableRandom random);

  @Override
  default Trial trial(SplittableRandom random) {
    Weir weir = weir(random);
    double usual = weir.flowAt(Draw.between(random, 0.003, 0.3));
    return new Trial(new WeirLaw(weir), usual, List.of(weir.flowAt(TAPER_ENDS_M)));
  }

  @Seeded
  default void headGivesTheFlowBack(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Weir weir = weir(random);
    for (int i = 0; i < 500; i++) {
      double head = Draw.between(random, 1e-9, 20);
      double flow = weir.flowAt(head);
      String where = "head " + head + " m, seed " + seed + ", " + weir;
      assertEquals(head, weir.headAt(flow), 4e-15 * head, where);
      assertEquals(flow, weir.flowAt(weir.headAt(flow)), 2e-14 * flow, where);
    }
  }

  @Seeded
  default void flowRisesWithHeadFarBeyondUse(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Weir weir = weir(random);
    double before = 0;
    for (double head = 1e-9; head < 1e3; head *= 1.01) {
      double flow = weir.flowAt(head);
      String where = "head " + head + " m, seed " + seed + ", " + weir;
      assertTrue(flow > before, where);
      assertTrue(weir.flowSlopeAt(head) > 0, where);
      before = flow;
    }
  }

  @Seeded
  default void flowSlopeIsTheDerivativeOfTheFlow(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Weir weir = weir(random);
    for (int i = 0; i < 200; i++) {
      double head = Draw.between(random, 1e-5, 1);
      double step = 1e-4 * Math.min(head, Math.abs(head - TAPER_ENDS_M));
      double expected = (weir.flowAt(head + step) - weir.flowAt(head - step)) / (2 * step);
      double rounding = 16 * Math.ulp(weir.flowAt(head)) / step;
      assertEquals(
          expected,
          weir.flowSlopeAt(head),
          1e-7 * expected + rounding,
          () -> "head " + head + " m, seed " + seed + ", " + weir);
    }
  }

  @Seeded
  default void flowSlopeIsContinuousWhereTheTaperEnds(long seed) {
    Weir weir = weir(new SplittableRandom(seed));
    double at = weir.flowSlopeAt(TAPER_ENDS_M);
    assertEquals(at, weir.flowSlopeAt(TAPER_ENDS_M - 1e-9), 1e-5 * at, "seed " + seed);
    assertEquals(at, weir.flowSlopeAt(TAPER_ENDS_M + 1e-9), 1e-5 * at, "seed " + seed);
    assertEquals(
        weir.flowAt(TAPER_ENDS_M),
        weir.flowAt(TAPER_ENDS_M - 1e-12),
        1e-9 * weir.flowAt(TAPER_ENDS_M),
        "seed " + seed);
  }

  @Seeded
  default void noWaterPoursAtNoHeadAndNothingComesBack(long seed) {
    Weir weir = weir(new SplittableRandom(seed));
    WeirLaw law = new WeirLaw(weir);
    assertEquals(0, weir.flowAt(0), "seed " + seed);
    assertEquals(0, weir.headAt(0), "seed " + seed);
    assertEquals(0, law.leastFlow(), "seed " + seed);
    assertEquals(Double.POSITIVE_INFINITY, law.greatestFlow(), "seed " + seed);
    assertEquals(Double.POSITIVE_INFINITY, law.slopeAt(0), "seed " + seed);
  }
}
