package rillwright.solver.study.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shares of variance against functions whose shares are known. */
class MainEffectTest {
  private static final int SAMPLES = 10_000;

  private static List<Double> shares(
      List<Distribution> inputs, long seed, Function<List<Double>, Double> function) {
    LatinHypercube cube = LatinHypercube.draw(inputs.size(), SAMPLES, seed);
    List<List<Double>> samples = new ArrayList<>();
    for (int j = 0; j < SAMPLES; j++) {
      int sample = j;
      samples.add(
          IntStream.range(0, inputs.size())
              .mapToObj(i -> inputs.get(i).quantile(cube.chance(i, sample)))
              .toList());
    }
    double[] outcomes = samples.stream().mapToDouble(function::apply).toArray();
    List<Double> shares = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      int input = i;
      double[] values = samples.stream().mapToDouble(sample -> sample.get(input)).toArray();
      shares.add(
          MainEffect.explainedVariance(MainEffect.order(values), values, outcomes)
              / MainEffect.variance(outcomes));
    }
    return shares;
  }

  /**
   * Of sin x1 + 7 sin² x2 + 0.1 x3⁴ sin x1, each x even between −π and π. With a = 7, b = 0.1: V1 =
   * (1 + b π⁴/5)²/2, V2 = a²/8, V3 = 0, V = a²/8 + b π⁴/5 + b² π⁸/18 + 1/2.
   *
   * <p>Source: Ishigami, T. and Homma, T. (1990), "An importance quantification technique in
   * uncertainty analysis for computer models", Proc. ISUMA '90, 398–403; shares 0.3139, 0.4424, 0.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void agreeWithThePublishedFunction(long seed) {
    Distribution angle = new EvenDistribution(-Math.PI, Math.PI);
    List<Double> shares =
        shares(
            List.of(angle, angle, angle),
            seed,
            x ->
                Math.sin(x.get(0))
                    + 7 * Math.pow(Math.sin(x.get(1)), 2)
                    + 0.1 * Math.pow(x.get(2), 4) * Math.sin(x.get(0)));
    assertEquals(0.3139, shares.get(0), 0.012);
    assertEquals(0.4424, shares.get(1), 0.012);
    assertEquals(0, shares.get(2), 0.004);
  }

  /** Of a sum: shares as the squares of the deviations, 3² : 4² : (√12)²/12 for an even one. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void ofASumAreAsTheVariancesOfItsTerms(long seed) {
    List<Double> shares =
        shares(
            List.of(
                new CutNormal(0, 3, -1e9, 1e9),
                new CutNormal(5, 4, -1e9, 1e9),
                new EvenDistribution(0, Math.sqrt(12))),
            seed,
            x -> x.get(0) - x.get(1) + x.get(2));
    assertEquals(9.0 / 26, shares.get(0), 0.015);
    assertEquals(16.0 / 26, shares.get(1), 0.015);
    assertEquals(1.0 / 26, shares.get(2), 0.006);
  }

  @Test
  void aStepIsSeen() {
    Distribution even = new EvenDistribution(0, 1);
    List<Double> shares = shares(List.of(even, even), 1, x -> x.get(0) < 0.37 ? 0.0 : 1.0);
    assertEquals(1, shares.get(0), 0.03);
    assertEquals(0, shares.get(1));
  }

  /** Of a product of two factors even between 0 and 1: 3/7 each, 1/7 by both together. */
  @Test
  void whatTwoDoTogetherIsNobodysShare() {
    // E[xy|x] = x/2: variance 1/48; Var(xy) = 1/9 − 1/16 = 7/144
    Distribution even = new EvenDistribution(0, 1);
    List<Double> shares = shares(List.of(even, even), 1, x -> x.get(0) * x.get(1));
    assertEquals(3.0 / 7, shares.get(0), 0.012);
    assertEquals(3.0 / 7, shares.get(1), 0.012);
  }

  @Test
  void whatDoesNotVaryHasNoVariance() {
    assertEquals(0, MainEffect.variance(new double[] {2.0, 2.0 + 1e-12, 2.0}));
    assertEquals(0, MainEffect.variance(new double[] {2.0}));
    assertEquals(1, MainEffect.variance(new double[] {1.0, 2.0, 3.0}), 1e-15);
  }
}
