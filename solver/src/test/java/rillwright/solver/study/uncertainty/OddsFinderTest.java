package rillwright.solver.study.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.uncertainty.Odds.FallOdds;
import rillwright.solver.water.Water;

/**
 * Odds against closed forms: from a basin at level H above an outlet in air, through a loss of R
 * Q², runs Q = √(H/R).
 */
class OddsFinderTest {
  private static final double WANT = 0.0095;
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static PointName name(String name) {
    return new PointName(name);
  }

  private static Basin basin(String name, double levelM) {
    return new Basin(name(name), levelM, Optional.empty(), NONE, NONE, NONE);
  }

  private static Outlet outlet(String name, OptionalDouble targetM3PerS) {
    return new Outlet(name(name), 0, NONE, Optional.empty(), targetM3PerS);
  }

  /** A loss of so many metres at 10 L/s. */
  private static Loss loss(double headM) {
    return new Loss(new PowerLoss(headM, 0.01, 2), Optional.empty());
  }

  private static Line line(String from, String to, Part part) {
    LineEnd open = new LineEnd(EndLoss.NONE, Optional.empty());
    return new Line(
        new LineName(from + " to " + to),
        name(from),
        name(to),
        Optional.empty(),
        List.of(part),
        open,
        open);
  }

  private static Network network(List<Point> points, List<Line> lines) {
    return new Network(Water.at(20), 0, points, lines);
  }

  /**
   * A basin at a level over an outlet that wants a little less than 10 L/s, and the loss between.
   */
  private static Network siphon(double levelM, double lossM) {
    return network(
        List.of(basin("tank", levelM), outlet("spout", OptionalDouble.of(WANT))),
        List.of(line("tank", "spout", loss(lossM))));
  }

  private record Sampled(
      List<Distribution> unknowns, Function<List<Double>, Optional<Network>> function)
      implements UncertainNetwork {
    @Override
    public Optional<Network> with(List<Double> values) {
      return function.apply(values);
    }
  }

  private static Odds odds(
      Network middle,
      SamplingPlan plan,
      List<Distribution> unknowns,
      Function<List<Double>, Network> function) {
    Function<List<Double>, Optional<Network>> always =
        values -> Optional.of(function.apply(values));
    return OddsFinder.find(middle, new Sampled(unknowns, always), plan, Progress.UNSEEN);
  }

  private static FallOdds only(Odds odds) {
    assertEquals(1, odds.falls().size());
    return odds.falls().get(0);
  }

  /** Q is monotone in H, so that its quantiles are those of H put through √(H/R). */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void flowOfAnUncertainLevelHasTheQuantilesOfTheLevel(long seed) {
    double least = 0.6;
    double greatest = 1.4;
    Odds odds =
        odds(
            siphon(1, 1),
            new SamplingPlan(10_000, seed, 2),
            List.of(new EvenDistribution(least, greatest)),
            values -> siphon(values.get(0), 1));

    FallOdds spout = only(odds);
    assertEquals(0.01 * Math.sqrt(0.64), spout.flow().orElseThrow().p5M3PerS(), 2e-6);
    assertEquals(0.01 * Math.sqrt(1.00), spout.flow().orElseThrow().p50M3PerS(), 2e-6);
    assertEquals(0.01 * Math.sqrt(1.36), spout.flow().orElseThrow().p95M3PerS(), 2e-6);
    // Q ≥ 0.999 W, less being missed, where H ≥ (0.999 W/0.01)², with H even between its ends
    double chance = (greatest - Math.pow(0.999 * 0.95, 2)) / (greatest - least);
    assertEquals(chance, spout.chance().orElseThrow(), 2e-4);
    assertEquals(1, odds.drivers().get(0).varianceShare(), 1e-4);
  }

  @Test
  void aNormalLevelGivesItsOwnQuantiles() {
    Odds odds =
        odds(
            siphon(1, 1),
            new SamplingPlan(10_000, 1, 2),
            List.of(new CutNormal(1, 0.1, 0, 1e9)),
            values -> siphon(values.get(0), 1));

    // Φ⁻¹(0.95) = 1.644854: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 (from
    // memory)
    assertEquals(0.01 * Math.sqrt(1 - 0.1644854), only(odds).flow().orElseThrow().p5M3PerS(), 5e-6);
    assertEquals(
        0.01 * Math.sqrt(1 + 0.1644854), only(odds).flow().orElseThrow().p95M3PerS(), 5e-6);
  }

  /**
   * Q = 0.01 √H · R^−½ with H even on (a, b) and R even on (c, d), apart from each other: m = E √H
   * = ⅔ (b^1.5 − a^1.5)/(b − a), E H = (a + b)/2, n = E R^−½ = 2 (√d − √c)/(d − c), E 1/R =
   * ln(d/c)/(d − c); the variance is E H · E 1/R − (m n)², that by H alone n² (E H − m²), by R
   * alone m² (E 1/R − n²).
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void sharesOfLevelAndLossAreThoseOfTheClosedForm(long seed) {
    double a = 0.2;
    double b = 1.8;
    double c = 0.5;
    double d = 2.5;
    double m = 2.0 / 3 * (Math.pow(b, 1.5) - Math.pow(a, 1.5)) / (b - a);
    double n = 2 * (Math.sqrt(d) - Math.sqrt(c)) / (d - c);
    double meanLevel = (a + b) / 2;
    double meanInverse = Math.log(d / c) / (d - c);
    double variance = meanLevel * meanInverse - m * m * n * n;

    Odds odds =
        odds(
            siphon(1, 1.5),
            new SamplingPlan(10_000, seed, 2),
            List.of(new EvenDistribution(a, b), new EvenDistribution(c, d)),
            values -> siphon(values.get(0), values.get(1)));

    double ofLevel = n * n * (meanLevel - m * m) / variance;
    double ofLoss = m * m * (meanInverse - n * n) / variance;
    assertTrue(ofLevel > ofLoss && ofLevel + ofLoss < 0.99, "the case tells something");
    assertEquals(ofLevel, odds.drivers().get(0).varianceShare(), 0.012);
    assertEquals(ofLoss, odds.drivers().get(1).varianceShare(), 0.012);
  }

  /** Two spouts: the summed variance is shared as the variances of the two flows. */
  @Test
  void twoFallsAreWeighedByTheVarianceOfTheirFlows() {
    Function<List<Double>, Network> twoSpouts =
        values ->
            network(
                List.of(
                    basin("high", values.get(0)),
                    basin("low", values.get(1)),
                    outlet("wide", NONE),
                    outlet("narrow", NONE)),
                List.of(line("high", "wide", loss(1)), line("low", "narrow", loss(4))));
    Odds odds =
        odds(
            twoSpouts.apply(List.of(1.0, 1.0)),
            new SamplingPlan(10_000, 1, 2),
            List.of(new EvenDistribution(0.6, 1.4), new EvenDistribution(0.6, 1.4)),
            twoSpouts);

    // four times the loss halves the flow: a quarter of the variance
    assertEquals(0.8, odds.drivers().get(0).varianceShare(), 0.01);
    assertEquals(0.2, odds.drivers().get(1).varianceShare(), 0.01);
    assertEquals(0.0, odds.drivers().get(0).ofFall().get(name("narrow")), 1e-9);
    assertEquals(1.0, odds.drivers().get(1).ofFall().get(name("narrow")), 1e-4);
    assertTrue(odds.falls().stream().allMatch(fall -> fall.chance().isEmpty()), "no targets");
  }

  @Test
  void theAnswerDoesNotDependOnTheNumberOfThreads() {
    List<Distribution> unknowns =
        List.of(new CutNormal(1, 0.2, 0, 1e9), new EvenDistribution(0.5, 2.5));
    List<List<FallOdds>> falls = new ArrayList<>();
    List<List<Odds.Driver>> drivers = new ArrayList<>();
    for (int threads : List.of(1, 2, 7)) {
      Odds odds =
          odds(
              siphon(1, 1),
              new SamplingPlan(1234, 9, threads),
              unknowns,
              values -> siphon(values.get(0), values.get(1)));
      falls.add(odds.falls());
      drivers.add(odds.drivers());
    }
    assertEquals(List.of(falls.get(0), falls.get(0), falls.get(0)), falls);
    assertEquals(List.of(drivers.get(0), drivers.get(0), drivers.get(0)), drivers);
  }

  /** Put into a tee whose only way out is a check on its way: from half of the samples too much. */
  @Test
  void samplesWithoutABalanceAreCounted() {
    Function<List<Double>, Network> drawn =
        values ->
            network(
                List.of(
                    basin("pond", 0),
                    new Chamber(name("chamber"), -1, -0.8, NONE, NONE),
                    new Tee(name("tap"), NONE, values.get(0)),
                    outlet("spout", OptionalDouble.of(WANT))),
                List.of(
                    line("pond", "chamber", new Skimmer(0.3, NONE, -0.1, 0.36, 0)),
                    line("chamber", "tap", loss(1)),
                    line("tap", "spout", loss(1))));
    // what the mouth passes at most, by ⅔ Cd b √(2g) h^1.5
    double most = 2.0 / 3 * 0.36 * 0.3 * Math.sqrt(2 * 9.80665) * Math.pow(0.1, 1.5);
    Odds odds =
        odds(
            drawn.apply(List.of(most / 2)),
            new SamplingPlan(1000, 1, 2),
            List.of(new EvenDistribution(most / 2, 1.5 * most)),
            drawn);

    assertEquals(500, odds.tally().withoutBalance(), 1);
    assertEquals(0, only(odds).chance().orElseThrow());
    assertEquals(0, only(odds).flow().orElseThrow().p95M3PerS());
  }

  @Test
  void valuesThatContradictEachOtherCountForNothing() {
    Sampled sampled =
        new Sampled(
            List.of(new EvenDistribution(0.5, 1.5)),
            values -> values.get(0) < 1 ? Optional.empty() : Optional.of(siphon(values.get(0), 1)));
    Odds odds =
        OddsFinder.find(siphon(1, 1), sampled, new SamplingPlan(1000, 1, 2), Progress.UNSEEN);

    assertEquals(500, odds.tally().contradictory());
    assertEquals(1, only(odds).chance().orElseThrow());
    assertEquals(0.01 * Math.sqrt(1.25), only(odds).flow().orElseThrow().p50M3PerS(), 2e-5);
    assertTrue(odds.contradiction().orElseThrow().get(0) < 1);
  }

  @Test
  void withoutAnySoundSampleNothingIsClaimed() {
    Sampled sampled =
        new Sampled(List.of(new EvenDistribution(0.5, 1.5)), values -> Optional.empty());
    Odds odds =
        OddsFinder.find(siphon(1, 1), sampled, new SamplingPlan(200, 1, 1), Progress.UNSEEN);

    assertEquals(200, odds.tally().contradictory());
    assertTrue(only(odds).chance().isEmpty() && only(odds).flow().isEmpty());
    assertEquals(0, odds.drivers().get(0).varianceShare());
  }

  @Test
  void progressIsReportedToItsEnd() {
    List<Integer> shown = new ArrayList<>();
    Sampled sampled =
        new Sampled(
            List.of(new EvenDistribution(0.5, 1.5)),
            values -> Optional.of(siphon(values.get(0), 1)));
    OddsFinder.find(
        siphon(1, 1),
        sampled,
        new SamplingPlan(1020, 1, 2),
        (done, all) -> shown.add(all == 1020 ? done : -1));

    assertEquals(shown.stream().sorted().distinct().toList(), shown);
    assertEquals(1020, shown.get(shown.size() - 1));
  }
}
