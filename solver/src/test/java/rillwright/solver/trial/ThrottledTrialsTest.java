package rillwright.solver.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.finding.Finding;
import rillwright.solver.law.Bore;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.trial.Verdict.Kind;

/** Pumps that give more than the targets, throttled; closed forms as for trials. */
class ThrottledTrialsTest {
  private static final double EXACT = 1e-9;

  private static PumpSetup alone(PumpOffer offer) {
    return new PumpSetup(offer, 1, Arrangement.PARALLEL, 1);
  }

  private static PumpTrial trial(Network network, PumpOffer offer) {
    return new PumpTrials(network, PlainNetworks.PLACE).run(alone(offer));
  }

  @ParameterizedTest(name = "{0} m at no flow: {1}")
  @CsvSource({
    "5, THROTTLED", // gives 3.8 m at 2 L/s
    "4.71, THROTTLED", // 3.51 m
    "4.65, THROTTLED_JUST_SHORT", // 3.45 m; 95 % take 3 + 0.451 = 3.451 m and get 3.51 m
    "4, FALLS_SHORT" // 2.8 m
  })
  void easierOutletIsThrottledToReachTheHigherOne(double shutOffM, Kind kind) {
    // Throttled, the high outlet takes 3 + c·0.002² + c·0.001² = 3.5 m at 2 L/s.
    PumpTrials trials = new PumpTrials(PlainNetworks.twoOutlets(), PlainNetworks.PLACE);

    PumpTrial trial = trials.run(alone(PlainNetworks.offer("p", shutOffM, 100)));

    assertEquals(3.5, trials.demand().throttled().orElseThrow().needed().headM(), EXACT);
    assertEquals(3, trials.demand().liftM(new PointName("high")).orElseThrow(), 1e-6);
    assertEquals(kind, trial.verdict().kind());
    assertEquals(new PointName("high"), trial.verdict().worst());
    assertTrue(trial.verdict().leastFraction() < 0.95, "as the valves stand it is short");
  }

  /**
   * The same by hand: 0.5 f² + 1.2 f = H - 3. Half shares of the way there are found once for all.
   */
  @ParameterizedTest(name = "{0} m at no flow")
  @ValueSource(doubles = {3.02, 3.2, 3.5, 3.9, 4, 4.3, 4.5})
  void pumpThatFallsShortGivesAllTheShareWhereItsHeadIsWhatTheyTake(double shutOffM) {
    PumpTrials trials = new PumpTrials(PlainNetworks.twoOutlets(), PlainNetworks.PLACE);
    Verdict verdict = trials.run(alone(PlainNetworks.offer("p", shutOffM, 100))).verdict();
    double share = Math.sqrt(1.44 + 2 * (shutOffM - 3)) - 1.2;

    assertEquals(Kind.FALLS_SHORT, verdict.kind());
    assertEquals(share, verdict.attainableShare().orElseThrow(), 2 * Demand.SHARE_ACCURACY);
    double half = (Demand.SHARE_ACCURACY + trials.demand().greatestShare()) / 2;
    assertSame(trials.demand().aboutHalf(half), trials.demand().about(half));
  }

  /**
   * At a share f of both targets the high outlet takes 3 + 0.5 f² m and the pump gives 4.65 - 1.2 f
   * m: f = √4.74 - 1.2.
   */
  @Test
  void throttledShareIsTheGreatestThatItReaches() {
    PumpTrials trials = new PumpTrials(PlainNetworks.twoOutlets(), PlainNetworks.PLACE);
    Verdict verdict = trials.run(alone(PlainNetworks.offer("p", 4.65, 100))).verdict();
    double share = Math.sqrt(4.74) - 1.2;
    assertEquals(share, verdict.throttledShare().orElseThrow(), 1e-4);
    assertEquals(2e-3 * share, verdict.throttled().orElseThrow().flowM3PerS(), 1e-6);
    assertEquals(
        1,
        trials.run(alone(PlainNetworks.offer("p", 5, 100))).verdict().throttledShare().orElse(0));
  }

  /** Two in series: 5.78 - 2.4 f = 3 + 0.5 f², f = √11.32 - 2.4 = 96.5 %. */
  @Test
  void throttledShareOfTwoInSeriesIsThatOfTheirHeadsTogether() {
    PumpTrials trials = new PumpTrials(PlainNetworks.twoOutlets(), PlainNetworks.PLACE);
    PumpOffer offer = PlainNetworks.offer("p", 2.89, 100);
    Verdict verdict = trials.run(new PumpSetup(offer, 2, Arrangement.SERIES, 1)).verdict();
    double share = Math.sqrt(11.32) - 2.4;
    assertEquals(0.965, share, 5e-4);
    assertEquals(share, verdict.throttledShare().orElseThrow(), 1e-4);
  }

  /**
   * Throttled to 2 L/s the chamber stands 1e4 · 0.002² = 0.04 m below the pond, 0.26 m over the
   * intake at -0.3 m; the sheet of the pump that is tried says how much it needs.
   */
  @ParameterizedTest
  @CsvSource({"0.3, true", "0.25, false"})
  void suctionOfAThrottledPumpIsJudgedByItsOwnSheet(double neededM, boolean found) {
    PumpOffer plain = PlainNetworks.offer("p", 6, 100);
    SuctionNeeds needs =
        new SuctionNeeds(
            OptionalDouble.of(neededM), OptionalDouble.empty(), OptionalDouble.empty());
    PumpTrial trial =
        trial(
            PlainNetworks.withChamber(),
            new PumpOffer(
                plain.model(), plain.curve(), plain.speeds(), plain.price(), needs, true));
    assertEquals(Kind.THROTTLED, trial.verdict().kind());
    List<Finding> low =
        trial.findings().stream().filter(it -> it.code().equals("low-submergence")).toList();
    assertEquals(found ? 1 : 0, low.size());
    low.forEach(it -> assertEquals(0.26, it.figures().get(0).value(), 1e-6));
  }

  @Test
  void throttlingNeedsAValveThatThrottlesNothingElse() {
    assertEquals(List.of(new PointName("low")), missing(PlainNetworks.twoOutlets()));
    assertEquals(List.of(new PointName("low")), missing(withValve("supply")));
    assertEquals(List.of(new PointName("low")), missing(withValve("to high")));
    assertEquals(List.of(), missing(withValve("to low")));
  }

  private static Network withValve(String line) {
    Network network = PlainNetworks.twoOutlets();
    Line before = network.line(new LineName(line));
    List<Part> parts = new ArrayList<>(before.parts());
    parts.add(new Valve("valve", new Valve.GivenLoss(0), new Bore(0.05), true));
    return network.withLine(before.withParts(parts));
  }

  private static List<PointName> missing(Network network) {
    return trial(network, PlainNetworks.offer("p", 5, 100)).verdict().missingValves();
  }
}
