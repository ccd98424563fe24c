package rillwright.solver.study.uncertainty.posterior;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.uncertainty.CutNormal;
import rillwright.solver.study.uncertainty.DiscreteUniform;
import rillwright.solver.study.uncertainty.Distribution;
import rillwright.solver.study.uncertainty.EvenDistribution;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/** What is known after a reading, where it can be worked out otherwise. */
class PosteriorFinderTest {
  private static final double Z = 1.6449;

  private static Posterior find(List<Distribution> unknowns, Model model, List<Evidence> evidence) {
    return PosteriorFinder.find(unknowns, model, evidence, 1, Progress.UNSEEN)
        .after()
        .orElseThrow();
  }

  private static Distribution normal(double mean, double deviation) {
    return new CutNormal(mean, deviation, -1e6, 1e6);
  }

  /** Normal unknowns and a linear reading: the posterior is normal, by elementary algebra. */
  @Test
  void ofALinearReadingOfNormalUnknownsItIsTheNormalOneOfAlgebra() {
    Posterior posterior =
        find(
            List.of(normal(1, 2), normal(3, 1)),
            values -> Optional.of(new double[] {values[0] + values[1], values[0] - values[1]}),
            List.of(new Measured(8, predicted -> 0.5)));
    // Sum ~ N(4, 5), read 8 with variance 0.25: first = 1 + 4/5.25 · 4, variance 4 − 16/5.25.
    double mean = 1 + 4 / 5.25 * 4;
    double deviation = Math.sqrt(4 - 16 / 5.25);
    Band first = posterior.ofValue(0);
    assertEquals(mean, first.p50(), 0.1 * deviation);
    assertEquals(mean - Z * deviation, first.p5(), 0.1 * deviation);
    assertEquals(mean + Z * deviation, first.p95(), 0.1 * deviation);
    // The difference is a priori N(−2, 5); its covariance with the sum is 4 − 1.
    double least = Math.sqrt(5 - 9 / 5.25);
    assertEquals(-2 + 3 / 5.25 * 4, posterior.ofOutcome(1).p50(), 0.1 * least);
    assertEquals(16 / 5.25, posterior.chiSquare(), 0.01, "the squared deviation of the reading");
  }

  /** Two even unknowns, of whose product one reading is taken: a curved ridge, by a fine grid. */
  @Test
  void ofACurvedRidgeItIsWhatAFineGridSays() {
    Measured product = new Measured(0.3, predicted -> 0.01);
    Posterior posterior =
        find(
            List.of(new EvenDistribution(0, 1), new EvenDistribution(0, 1)),
            values -> Optional.of(new double[] {values[0] * values[1]}),
            List.of(product));
    int cells = 2000;
    double[] weight = new double[cells];
    double all = 0;
    for (int i = 0; i < cells; i++) {
      for (int j = 0; j < cells; j++) {
        double off = product.deviations((i + 0.5) * (j + 0.5) / cells / cells);
        weight[i] += Math.exp(-off * off / 2);
      }
      all += weight[i];
    }
    Band band = posterior.ofValue(0);
    double[] expected = new double[3];
    double[] shares = {0.05, 0.5, 0.95};
    double passed = 0;
    for (int i = 0; i < cells; i++) {
      for (int k = 0; k < 3; k++) {
        expected[k] = passed < shares[k] * all ? (i + 0.5) / cells : expected[k];
      }
      passed += weight[i];
    }
    assertEquals(expected[0], band.p5(), 0.02);
    assertEquals(expected[1], band.p50(), 0.02);
    assertEquals(expected[2], band.p95(), 0.02);
  }

  @Test
  void ofSomeValuesEachIsAsLikelyAsTheReadingMakesIt() {
    Posterior posterior =
        find(
            List.of(new DiscreteUniform(List.of(1.0, 2.0, 3.0)), normal(0, 1)),
            values -> Optional.of(new double[] {values[0] + values[1]}),
            List.of(new Measured(2.5, predicted -> 1)));
    // The reading is N(value, 2): exp(−(2.5 − value)²/4) of 1, 2 and 3.
    double[] likely = {Math.exp(-2.25 / 4), Math.exp(-0.25 / 4), Math.exp(-0.25 / 4)};
    double share = posterior.mean(draw -> draw.values().get(0) == 1 ? 1 : 0);
    assertEquals(likely[0] / (likely[0] + likely[1] + likely[2]), share, 0.02);
  }

  @Test
  void whatDoesNotFitHasALargeChiSquare() {
    Posterior posterior =
        find(
            List.of(new EvenDistribution(0, 1)),
            values -> Optional.of(new double[] {values[0], values[0]}),
            List.of(new Measured(0.5, p -> 0.01), new Measured(0.6, p -> 0.01)));
    assertTrue(ChiSquare.exceeds(posterior.chiSquare(), 2) < 1e-6);
    assertEquals(0.05, ChiSquare.exceeds(3.841, 1), 1e-4, "printed tables of chi-square");
    assertEquals(0.001, ChiSquare.exceeds(13.816, 2), 1e-5, "printed tables of chi-square");
  }

  @Test
  void withoutAReadingItIsWhatWasKnownBefore() {
    Posterior posterior =
        find(
            List.of(new EvenDistribution(0, 1)),
            values -> Optional.of(new double[] {2 * values[0]}),
            List.of());
    assertEquals(0.05, posterior.ofValue(0).p5(), 0.002);
    assertEquals(1.9, posterior.ofOutcome(0).p95(), 0.004);
  }
}
