package rillwright.solver.law.skimmer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Draw;
import rillwright.solver.law.HeadLawContract;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.Trial;

class SkimmerLawTest implements HeadLawContract {

  @Override
  public Trial trial(SplittableRandom random) {
    SkimmerLaw law = mouth(random);
    return Trial.inOnePiece(law, law.freeFlowM3PerS());
  }

  private static SkimmerLaw mouth(SplittableRandom random) {
    return SkimmerLaw.ofMouth(
        Draw.between(random, 0.3, 0.65),
        Draw.between(random, 0.05, 1),
        Draw.between(random, 0.002, 0.2));
  }

  /**
   * Villemonte's factor (formula from memory: J. R. Villemonte 1947, Engineering News-Record) at
   * h2/h1, computed to four digits.
   */
  @ParameterizedTest(name = "h2/h1 {0}: {1} of the free flow")
  @CsvSource({"0.2, 0.9646", "0.5, 0.8454", "0.8, 0.6163", "0.9, 0.4770"})
  void drowningTakesVillemontesShareOfTheFlow(double ratio, double share) {
    SkimmerLaw law = SkimmerLaw.ofMouth(0.36, 0.3, 0.1);
    double lower = law.headLossAt((share - 0.0001) * law.freeFlowM3PerS());
    double upper = law.headLossAt((share + 0.0001) * law.freeFlowM3PerS());
    double loss = 0.1 * (1 - ratio);
    assertTrue(lower < loss && loss < upper, lower + " " + loss + " " + upper);
  }

  @Seeded
  void levelBehindGivesTheFlowBack(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    SkimmerLaw law = mouth(random);
    for (int i = 0; i < 200; i++) {
      double ratio = random.nextDouble();
      double flow = law.freeFlowM3PerS() * Math.pow(1 - Math.pow(ratio, 1.5), 0.385);
      assertEquals(
          law.depthOverSillM() * (1 - ratio),
          law.headLossAt(flow),
          1e-12,
          "h2/h1 " + ratio + ", seed " + seed);
    }
  }

  /** Just below the free flow the level downstream comes up to the sill, true to a nanometre. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1e-6, 1e-9, 1e-12, 1e-15})
  void headIsExactJustBelowTheFreeFlow(double missingShare) {
    SkimmerLaw law = new SkimmerLaw(0.004, 0.1);
    double share = 1 - missingShare;
    double drowned = -Math.expm1(Math.log(share) / 0.385);
    double expected = 0.1 * (1 - Math.pow(drowned, 2.0 / 3));
    assertEquals(expected, law.headLossAt(0.004 * share), 1e-11);
  }

  @Test
  void freeFlowIsTheWeirsOverItsOpenWidth() {
    SkimmerLaw law = SkimmerLaw.ofMouth(0.6, 0.9 * 0.3, 0.08);
    double expected = 2.0 / 3 * 0.6 * 0.27 * Math.sqrt(2 * 9.80665) * Math.pow(0.08, 1.5);
    assertEquals(expected, law.greatestFlow(), 1e-16);
    assertEquals(0.08, law.headLossAt(law.greatestFlow()), 1e-17);
    assertEquals(Double.POSITIVE_INFINITY, law.slopeAt(law.greatestFlow()));
  }

  @Test
  void nothingComesBackAndNoFlowTakesNoHead() {
    SkimmerLaw law = SkimmerLaw.ofMouth(0.36, 0.3, 0.1);
    assertEquals(0, law.leastFlow());
    assertEquals(0, law.headLossAt(0), 0);
  }

  /** Water at or below the sill, or a mouth wholly clogged. */
  @ParameterizedTest
  @CsvSource({"0.3, 0", "0.3, -0.05", "0, 0.1"})
  void passesNothingWithoutWaterOrWidth(double openWidth, double depth) {
    SkimmerLaw law = SkimmerLaw.ofMouth(0.36, openWidth, depth);
    assertEquals(0, law.leastFlow());
    assertEquals(0, law.greatestFlow());
    assertEquals(0, law.headLossAt(0));
    assertEquals(0, law.slopeAt(0));
  }

  @ParameterizedTest
  @CsvSource({"-0.001, 0.1", "NaN, 0.1", "0.001, NaN", "0.001, -0.1", "Infinity, 0.1"})
  void refusesWhatIsNoMouth(double freeFlow, double depth) {
    assertThrows(IllegalArgumentException.class, () -> new SkimmerLaw(freeFlow, depth));
  }
}
