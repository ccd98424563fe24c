package rillwright.solver.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.finding.Finding;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.pump.BestEfficiency;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.trial.Verdict.Kind;

/**
 * Closed forms: H₀ − sQ = z + cQ², so Q = (−s + √(s² + 4c(H₀ − z)))/2c, with s = 600 s/m², z = 2 m,
 * c = 1e5 s²/m⁵; the target is 2 L/s, which take 2.4 m.
 */
class PumpTrialsTest {
  private static final double EXACT = 1e-9;
  private static final PointName TOP = new PointName("top");

  private static PumpSetup alone(PumpOffer offer) {
    return new PumpSetup(offer, 1, Arrangement.PARALLEL, 1);
  }

  private static PumpTrial trial(Network network, PumpOffer offer) {
    return new PumpTrials(network, PlainNetworks.PLACE).run(alone(offer));
  }

  @ParameterizedTest(name = "{0} m at no flow: {1}")
  @CsvSource({
    "4, MEETS_TARGET", // 2.385 L/s, 119 %
    "3.55, JUST_SHORT", // 1.950 L/s, 97.5 %
    "3.5, FALLS_SHORT", // 1.899 L/s, 94.95 %
    "3.2, FALLS_SHORT", // 1.583 L/s, 79 %
    "6, THROTTLED", // 4 L/s, 200 %
    "2, CANNOT_LIFT",
    "1.9, CANNOT_LIFT"
  })
  void verdictFollowsFromTheClosedFormOfTheFlow(double shutOffM, Kind kind) {
    PumpTrial trial = trial(PlainNetworks.oneOutlet(), PlainNetworks.offer("p", shutOffM, 100));

    double flow = shutOffM <= 2 ? 0 : PlainNetworks.flowOf(shutOffM, PlainNetworks.C);
    assertEquals(flow, trial.operating().flowM3PerS(), EXACT * 0.002);
    assertEquals(flow, trial.state().point(TOP).outflowM3PerS(), EXACT * 0.002);
    assertEquals(shutOffM - 600 * flow, trial.operating().headM(), EXACT);
    assertEquals(kind, trial.verdict().kind());
    assertEquals(flow / 0.002, trial.verdict().leastFraction(), 1e-8);
    assertEquals(flow / (shutOffM / 600), trial.shareOfRange(), 1e-8);
  }

  @Test
  void missingHeadIsThatAtTheTargetFlow() {
    // 2.4 m are needed at 2 L/s; 3.2 − 600 · 0.002 = 2 m are given.
    Verdict verdict =
        trial(PlainNetworks.oneOutlet(), PlainNetworks.offer("p", 3.2, 100)).verdict();

    assertEquals(0.4, verdict.missingHeadM().orElseThrow(), 1e-8);
    assertTrue(
        trial(PlainNetworks.oneOutlet(), PlainNetworks.offer("p", 4, 100))
            .verdict()
            .missingHeadM()
            .isEmpty());
  }

  @Test
  void throttledPointIsTheTargetFlowOnThePumpsOwnCurve() {
    PumpTrial trial = trial(PlainNetworks.oneOutlet(), PlainNetworks.offer("p", 6, 100));

    RunningPoint throttled = trial.verdict().throttled().orElseThrow();
    assertEquals(0.002, throttled.flowM3PerS(), EXACT * 0.002);
    assertEquals(6 - 600 * 0.002, throttled.headM(), EXACT);
    assertEquals(throttled, trial.inUse());
  }

  @Test
  void severalInParallelShareTheFlowAndInSeriesAddTheirHeads() {
    PumpTrials trials = new PumpTrials(PlainNetworks.oneOutlet(), PlainNetworks.PLACE);
    PumpOffer offer = PlainNetworks.offer("p", 3.2, 100);

    PumpTrial parallel = trials.run(new PumpSetup(offer, 2, Arrangement.PARALLEL, 1));
    PumpTrial series = trials.run(new PumpSetup(offer, 2, Arrangement.SERIES, 1));

    // 3.2 − 300 Q = 2 + cQ² and 6.4 − 1200 Q = 2 + cQ²
    double c = PlainNetworks.C;
    double q2 = (-300 + Math.sqrt(300 * 300 + 4 * c * 1.2)) / (2 * c);
    double q3 = (-1200 + Math.sqrt(1200 * 1200 + 4 * c * 4.4)) / (2 * c);
    assertEquals(q2, parallel.operating().flowM3PerS(), EXACT * q2);
    assertEquals(q3, series.operating().flowM3PerS(), EXACT * q3);
    assertEquals(200, parallel.operating().powerW().orElseThrow(), EXACT);
  }

  @Test
  void slowestSpeedIsTheClosedFormInWholePercents() {
    // n² 6 − n 600 · 0.002 = 2.4: n = (1.2 + √(1.44 + 57.6))/12 = 0.7403, so 75 %
    PumpOffer offer = PlainNetworks.offer("p", 6, 100, Optional.of(new SpeedBand(0.4, 1)));

    List<PumpTrial> trials =
        new PumpTrials(PlainNetworks.oneOutlet(), PlainNetworks.PLACE)
            .runAtUsefulSpeeds(alone(offer));

    assertEquals(2, trials.size());
    assertEquals(1, trials.get(0).setup().speed());
    assertEquals(0.75, trials.get(1).setup().speed());
    assertEquals(Kind.MEETS_TARGET, trials.get(1).verdict().kind());
    // P = n³ P₁, n = 0.75
    assertEquals(42.1875, trials.get(1).operating().powerW().orElseThrow(), EXACT);
  }

  @Test
  void speedStaysWithinWhatTheSheetAllows() {
    PumpOffer offer = PlainNetworks.offer("p", 6, 100, Optional.of(new SpeedBand(0.9, 1)));

    List<PumpTrial> trials =
        new PumpTrials(PlainNetworks.oneOutlet(), PlainNetworks.PLACE)
            .runAtUsefulSpeeds(alone(offer));

    assertEquals(0.9, trials.get(1).setup().speed());
    assertEquals(Kind.THROTTLED, trials.get(1).verdict().kind());
  }

  @Test
  void efficiencyIsWaterPowerOverElectricalPower() {
    PumpTrial trial = trial(PlainNetworks.oneOutlet(), PlainNetworks.offer("p", 4, 100));

    double flow = PlainNetworks.flowOf(4, PlainNetworks.C);
    double density = PlainNetworks.oneOutlet().water().densityKgPerM3();
    double waterPower = density * Gravity.STANDARD_M_PER_S2 * flow * (4 - 600 * flow);
    assertEquals(waterPower / 100, trial.operating().wireToWater().orElseThrow(), 1e-8);
  }

  @Test
  void bestEfficiencyOfAStraightCurveAtConstantPowerIsHalfItsRange() {
    // Q (H₀ − sQ) is greatest at H₀/2s.
    PumpOffer offer = PlainNetworks.offer("p", 4, 100);

    assertEquals(4 / 1200.0, BestEfficiency.flowM3PerS(offer.curve()).orElseThrow(), 1e-8);
    PumpTrial trial = trial(PlainNetworks.oneOutlet(), offer);
    double flow = PlainNetworks.flowOf(4, PlainNetworks.C);
    assertEquals(flow / (4 / 1200.0), trial.shareOfBestEfficiencyFlow().orElseThrow(), 1e-5);
  }

  @ParameterizedTest(name = "sheet asks for {0} m: {1}")
  @CsvSource({"0.2, false", "0.28, true"})
  void lessWaterOverTheIntakeThanTheSheetAsksForIsFound(double neededM, boolean found) {
    // The pump draws about 2 L/s, the chamber stands 1e4 · 0.002² = 0.04 m below the pond and so
    // about 0.26 m above its intake.
    PumpOffer plain = PlainNetworks.offer("p", 3.65, 100);
    PumpOffer offer =
        new PumpOffer(
            "p",
            plain.curve(),
            Optional.empty(),
            OptionalDouble.empty(),
            new SuctionNeeds(
                OptionalDouble.of(neededM), OptionalDouble.empty(), OptionalDouble.empty()),
            true);

    PumpTrial trial = trial(PlainNetworks.withChamber(), offer);

    List<String> codes = trial.findings().stream().map(Finding::code).toList();
    assertEquals(found, codes.contains("low-submergence"), codes.toString());
  }

  @Test
  void starvedChamberIsNeverPlainDoingIt() {
    // 1e4 Q² = 0.3 m at 5.48 L/s: more cannot come in.
    PumpTrial trial = trial(PlainNetworks.withChamber(), PlainNetworks.offer("p", 40, 100));

    assertTrue(trial.verdict().starves());
    assertEquals(Kind.THROTTLED, trial.verdict().kind());
    assertEquals(Math.sqrt(0.3 / 1e4), trial.operating().flowM3PerS(), 1e-8);
  }

  @Test
  void shutValveBehindThePumpPutsTheTargetOutOfReach() {
    Network open = PlainNetworks.oneOutlet();
    Line supply = open.line(PlainNetworks.PLACE.line());
    List<Part> parts = new ArrayList<>(supply.parts());
    parts.add(
        new Valve("valve", new Valve.GivenLoss(Double.POSITIVE_INFINITY), new Bore(0.05), false));
    Network shut = open.withLine(supply.withParts(parts));

    PumpTrials trials = new PumpTrials(shut, PlainNetworks.PLACE);
    PumpTrial trial = trials.run(alone(PlainNetworks.offer("p", 6, 100)));

    assertTrue(trials.demand().asTheyStand().isEmpty());
    assertTrue(trials.demand().throttled().isEmpty());
    assertEquals(Kind.FALLS_SHORT, trial.verdict().kind());
    assertEquals(0, trial.operating().flowM3PerS());
  }

  @Test
  void costIsThePriceAndElectricityOverTheYears() {
    // 100 W · 5000 h = 500 kWh a year; 10 years at 0.2 are 1000, and twice 300 for the pumps.
    PumpOffer plain = PlainNetworks.offer("p", 3.2, 50);
    PumpOffer offer =
        new PumpOffer(
            "p", plain.curve(), Optional.empty(), OptionalDouble.of(300), SuctionNeeds.NONE, true);
    RunningTerms terms = new RunningTerms(5000, OptionalDouble.of(0.2), 10);

    RatedTrial rated =
        RatedTrial.of(
            new PumpTrials(PlainNetworks.oneOutlet(), PlainNetworks.PLACE)
                .run(new PumpSetup(offer, 2, Arrangement.PARALLEL, 1)),
            List.of(),
            terms);

    assertEquals(500, rated.energyKwhPerYear().orElseThrow(), EXACT);
    assertEquals(1600, rated.costOverYears().orElseThrow(), EXACT);
    assertFalse(
        new RunningTerms(5000, OptionalDouble.empty(), 10)
            .costOverYears(OptionalDouble.of(100), 300)
            .isPresent());
  }
}
