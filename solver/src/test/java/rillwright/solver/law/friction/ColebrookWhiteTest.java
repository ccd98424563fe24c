package rillwright.solver.law.friction;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Draw;
import rillwright.solver.law.Seeded;

class ColebrookWhiteTest {

  @ParameterizedTest(name = "k/D {0}, Re {1}")
  @CsvFileSource(resources = "/computed/colebrook-white.csv", useHeadersInDisplayName = true)
  void agreesWithTheEquationSolvedInFortyDigits(
      double relativeRoughness, double reynolds, double factor) {
    assertEquals(
        factor,
        ColebrookWhite.darcyFrictionFactor(relativeRoughness, reynolds),
        1e-14 * factor / Math.sqrt(factor));
  }

  @ParameterizedTest(name = "k/D {0}")
  @ValueSource(doubles = {0, 1e-9, 1e-7, 1e-6, 1e-5, 1e-4, 3e-4, 1e-3, 3e-3, 0.01, 0.03, 0.05})
  void factorPutBackIntoTheEquationSatisfiesIt(double relativeRoughness) {
    for (double exponent = 3.3; exponent <= 9; exponent += 0.01) {
      double reynolds = Math.pow(10, exponent);
      double x = 1 / Math.sqrt(ColebrookWhite.darcyFrictionFactor(relativeRoughness, reynolds));
      double right = -2 * Math.log10(relativeRoughness / 3.7 + 2.51 / reynolds * x);
      assertEquals(right, x, 1e-12, "Re " + reynolds);
    }
  }

  @Seeded
  void factorIsTheRootThatBrentsMethodFinds(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 200; i++) {
      double relativeRoughness = Draw.between(random, 1e-8, 0.05);
      double reynolds = Draw.between(random, 2000, 1e9);
      double factor =
          new BrentSolver(1e-15, 1e-15, 1e-15)
              .solve(
                  1000,
                  f ->
                      1 / Math.sqrt(f)
                          + 2
                              * Math.log10(
                                  relativeRoughness / 3.7 + 2.51 / (reynolds * Math.sqrt(f))),
                  0.001,
                  0.5);
      assertEquals(
          factor,
          ColebrookWhite.darcyFrictionFactor(relativeRoughness, reynolds),
          1e-12 * factor,
          "k/D " + relativeRoughness + ", Re " + reynolds + ", seed " + seed);
    }
  }

  @Seeded
  void slopeIsTheDerivativeByReynolds(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 200; i++) {
      double relativeRoughness = Draw.between(random, 1e-8, 0.05);
      double reynolds = Draw.between(random, 4000, 1e8);
      double step = 1e-4 * reynolds;
      double above = ColebrookWhite.darcyFrictionFactor(relativeRoughness, reynolds + step);
      double below = ColebrookWhite.darcyFrictionFactor(relativeRoughness, reynolds - step);
      ColebrookWhite.Factor factor = ColebrookWhite.factorAt(relativeRoughness, reynolds);
      double expected = (above - below) / (2 * step);
      assertEquals(
          expected,
          factor.slopeByReynolds(),
          1e-6 * Math.abs(expected) + 1e-15 / step,
          "k/D " + relativeRoughness + ", Re " + reynolds + ", seed " + seed);
    }
  }

  @Test
  void factorFallsWithReynoldsAndRisesWithRoughness() {
    double usual = ColebrookWhite.darcyFrictionFactor(1e-4, 1e5);
    assertEquals(1, Math.signum(usual - ColebrookWhite.darcyFrictionFactor(1e-4, 1.1e5)));
    assertEquals(-1, Math.signum(usual - ColebrookWhite.darcyFrictionFactor(1.1e-4, 1e5)));
  }

  /** Limit of no viscosity: the rough-pipe law 1/√f = −2 log₁₀(k/(3.7 D)). */
  @Test
  void tendsToTheRoughPipeLaw() {
    double x = -2 * Math.log10(0.01 / 3.7);
    assertEquals(1 / (x * x), ColebrookWhite.darcyFrictionFactor(0.01, 1e15), 1e-11);
  }
}
