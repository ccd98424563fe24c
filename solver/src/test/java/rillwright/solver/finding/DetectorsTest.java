package rillwright.solver.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.finding.SmallGarden.QUIET;
import static rillwright.solver.finding.SmallGarden.curve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.LineParts.Pipe;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Filter;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Each finding is made of a garden with its fault and not without; its figures are the state's. */
class DetectorsTest {
  private static final PointName FALL = new PointName("fall");

  private SteadyState state;

  private List<Finding> of(Network network) {
    state = SteadyStateFinder.find(network);
    return Findings.of(state);
  }

  /** The one with a code; none of a quiet garden has it. */
  private Finding the(String code, SmallGarden garden) {
    return the(code, of(garden.network()));
  }

  private static Finding the(String code, List<Finding> findings) {
    List<Finding> found = findings.stream().filter(it -> it.code().equals(code)).toList();
    assertEquals(1, found.size(), () -> codes(findings) + " has one " + code);
    return found.get(0);
  }

  private static List<String> codes(List<Finding> findings) {
    return findings.stream().map(Finding::code).toList();
  }

  private static double figure(Finding finding, String name) {
    return finding.figures().stream()
        .filter(figure -> figure.name().equals(name))
        .mapToDouble(Figure::value)
        .findFirst()
        .orElseThrow();
  }

  private double fall() {
    return state.point(FALL).outflowM3PerS();
  }

  private double line(String name) {
    return state.line(new LineName(name)).flowM3PerS();
  }

  @Test
  void nothingIsFoundOfAQuietGarden() {
    assertEquals(List.of(), codes(of(QUIET.network())));
    assertTrue(fall() >= 0.005);
  }

  @Test
  void fallUnderItsTarget() {
    Finding under = the("under-target", QUIET.target(0.01));
    assertEquals(Severity.PROBLEM, under.severity());
    assertEquals(fall(), figure(under, "flow"), 0);
    assertEquals(1 - fall() / 0.01, figure(under, "lack"), 1e-12);
    assertEquals(0.01, figure(under, "target"), 0);
  }

  @Test
  void fallOverItsTarget() {
    Finding over = the("over-target", QUIET.target(0.001));
    assertEquals(Severity.ADVICE, over.severity());
    assertEquals(fall(), figure(over, "flow"), 0);
    assertEquals(fall() / 0.001 - 1, figure(over, "excess"), 1e-9);
  }

  @Test
  void suctionWithoutASkimmer() {
    Network open =
        new NetworkBuilder()
            .basin("pond", 0)
            .fall("fall", 2, new PowerWeir(1.6, 0.75, BrinkRule.FREE_OVERFALL))
            .line(
                "supply",
                "pond",
                "fall",
                LineParts.in(Pipe.of(0.08, 1.5e-6))
                    .pump("P-180", QUIET.curve())
                    .checkValve(2)
                    .run(9))
            .build();
    Finding suction = the("open-suction", of(open));
    assertEquals(Severity.DANGER, suction.severity());
    assertEquals(line("supply"), figure(suction, "flow"), 0);
  }

  @Test
  void skimmerAboveTheWater() {
    List<Finding> findings = of(QUIET.level(-0.25).network());
    assertEquals(
        0.25 + SmallGarden.SILL_M, figure(the("dry-skimmer", findings), "belowSill"), 1e-12);
    assertEquals(Severity.DANGER, the("pump-runs-dry", findings).severity());
  }

  @Test
  void chamberDrawnDown() {
    Finding starved = the("starved-chamber", QUIET.skimmer(0.02));
    assertEquals("chamber", starved.at());
    assertEquals(line("intake"), figure(starved, "inflow"), 0);
  }

  @Test
  void waterFastInANarrowPipe() {
    Finding fast = the("fast-discharge", QUIET.pipe(0.05));
    assertEquals(line("supply") / new Bore(0.05).areaM2(), figure(fast, "velocity"), 1e-9);
    assertEquals(1.524, figure(fast, "usualGreatestVelocity"), 0);
  }

  /**
   * Water that comes home fast into the open pond that a pump draws from is not upstream of a pump.
   */
  @Test
  void gravityPipeIntoAnOpenPondIsNotSuction() {
    Network home =
        new NetworkBuilder()
            .basin("pond", 0)
            .basin("upper pond", 3)
            .line(
                "up",
                "pond",
                "upper pond",
                LineParts.in(Pipe.of(0.08, 1.5e-6)).pump("P-180", QUIET.curve()).run(9))
            .line("down", "upper pond", "pond", LineParts.in(Pipe.of(0.03, 1.5e-6)).run(12))
            .build();
    List<Finding> findings = of(home);
    assertEquals("down", the("fast-discharge", findings).at());
    assertTrue(line("down") / new Bore(0.03).areaM2() > 1.524);
    assertEquals(0, findings.stream().filter(it -> it.code().equals("fast-suction")).count());
  }

  /** 35 √(1/62.3) ft/s is 4.43 ft/s, 1.35 m/s (Crane, Technical Paper 410). */
  @Test
  void swingCheckValveInTooSlowWater() {
    Bore bore = new Bore(0.08);
    CheckValve swing = new CheckValve("swing check valve", 0, 1.8, bore, true);
    Finding flutters = the("check-valve-flutters", QUIET.with(swing));
    double held = figure(flutters, "heldOpenVelocity");
    assertEquals(1.35, held, 0.005);
    assertEquals(bore.velocityAt(line("supply")), figure(flutters, "velocity"), 1e-12);
    assertEquals(4.6, figure(flutters, "fullyOpenVelocity"), 0.05, "Hydraulic Institute, 15 ft/s");
    double smaller = figure(flutters, "heldOpenBore");
    assertEquals(held, new Bore(smaller).velocityAt(line("supply")), 1e-12);
    CheckValve narrow = new CheckValve("swing check valve", 0, 1.8, new Bore(0.04), true);
    assertFalse(codes(of(QUIET.with(narrow).network())).contains("check-valve-flutters"));
    CheckValve spring = new CheckValve("spring check valve", 0, 1.8, bore);
    assertFalse(codes(of(QUIET.with(spring).network())).contains("check-valve-flutters"));
  }

  @Test
  void pumpWithoutACheckValve() {
    Finding back = the("runs-back", QUIET.unchecked());
    double chamber = state.point(new PointName("chamber")).headM().orElseThrow();
    assertEquals(2 - chamber, figure(back, "fromAbove"), 1e-12);
  }

  @Test
  void pumpBeyondItsSheet() {
    Finding past = the("past-published-range", QUIET.pump(curve(0, 6.7, 0.001, 6.5, 0.002, 6.2)));
    assertEquals(line("supply"), figure(past, "flow"), 0);
    assertEquals(0.002, figure(past, "lastPublishedFlow"), 0);
  }

  @Test
  void pumpNearShutOff() {
    SmallGarden weak = QUIET.pump(curve(0, 2.3, 0.025, 1.5, 0.05, 0.2)).target(1e-4);
    Finding near = the("near-shut-off", weak);
    assertEquals(line("supply") / 0.05, figure(near, "shareOfRange"), 1e-12);
  }

  @Test
  void fallThatALittleLessWaterHalves() {
    Finding touchy = the("touchy", QUIET.pump(curve(0, 2.07, 0.025, 1.5, 0.05, 0.2)).target(1e-4));
    assertEquals(fall(), figure(touchy, "flow"), 0);
    assertTrue(figure(touchy, "loweredFlow") <= fall() / 2);
  }

  @Test
  void pumpThatCannotLift() {
    Finding held = the("pump-held-shut", QUIET.pump(curve(0, 1, 0.003, 0.5)));
    assertEquals(Severity.DANGER, held.severity());
    assertEquals(1, figure(held, "shutOffHead"), 0);
  }

  @Test
  void curveWithAHump() {
    assertEquals(
        Severity.NOTE,
        the("curve-levelled", QUIET.pump(curve(0, 5, 0.002, 5.5, 0.006, 2))).severity());
    assertFalse(codes(of(state.network())).contains("may-not-start"));
    Finding held = the("may-not-start", QUIET.pump(curve(0, 1.5, 0.002, 5.5, 0.006, 1)));
    assertEquals(2 - 1.5, figure(held, "aboveReach"), 1e-12);
    assertTrue(fall() > 0, "by the levelled curve");
  }

  @Test
  void pumpAgainstAShutValve() {
    Valve shut =
        new Valve("valve", new Valve.GivenLoss(Double.POSITIVE_INFINITY), new Bore(0.08), false);
    List<Finding> findings = of(QUIET.with(shut).network());
    assertEquals("supply", the("valve-shut", findings).at());
    assertEquals(Severity.DANGER, the("pump-runs-against-shut-way", findings).severity());
  }

  @Test
  void filterCloggedAltogetherOrRunningOver() {
    Filter clogged = new Filter(new PowerLoss(1e4, 1, 2), 1, OptionalDouble.empty(), 0);
    assertEquals("supply", the("clogged-shut", QUIET.with(clogged)).at());
    Filter open = new Filter(new PowerLoss(1e4, 1, 2), 0, OptionalDouble.of(0.05), 0);
    Finding over = the("filter-runs-over", QUIET.with(open));
    assertEquals(0.05, figure(over, "openTop"), 0);
    assertEquals(Math.sqrt(0.05 / 1e4), figure(over, "passed"), 1e-9);
    assertEquals(line("supply"), figure(over, "passed") + figure(over, "over"), 1e-12);
  }

  @Test
  void sheetThatIsTooThin() {
    Finding thin = the("thin-sheet", QUIET.crest(2, 12));
    assertEquals(Math.pow(fall() / (1.6 * 12), 2.0 / 3), figure(thin, "crestHead"), 1e-9);
  }

  @Test
  void crestBelowTheWater() {
    Finding below = the("crest-not-above-water", QUIET.crest(-0.1, 0.75));
    assertEquals(0.1, figure(below, "belowWater"), 1e-12);
  }

  @Test
  void targetWithoutAPump() {
    Network still =
        new NetworkBuilder()
            .basin("pond", 0)
            .fall("fall", 2, new PowerWeir(1.6, 0.75, BrinkRule.FREE_OVERFALL), 0.004)
            .line("way", "pond", "fall", LineParts.in(Pipe.of(0.08, 1.5e-6)).checkValve(2).run(9))
            .build();
    assertEquals("fall", the("no-pump", of(still)).at());
  }

  @Test
  void basinAboveItsOverflow() {
    Basin low =
        new Basin(
            new PointName("high pond"),
            0.5,
            Optional.empty(),
            OptionalDouble.of(0.4),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    Network network =
        new NetworkBuilder()
            .point(low)
            .outlet("end", 0)
            .line("way", "high pond", "end", LineParts.in(Pipe.of(0.05, 1.5e-6)).run(9))
            .build();
    assertEquals(0.1, figure(the("runs-over", of(network)), "aboveRim"), 1e-12);
  }

  @Test
  void morePowerOutThanIn() {
    Finding impossible = the("impossible-power", QUIET.pump(SmallGarden.curveOf(40)));
    assertEquals(40, figure(impossible, "power"), 0);
    assertEquals(
        state.network().water().densityKgPerM3() * 9.80665 * 0.003 * 5,
        figure(impossible, "waterPower"),
        1e-6);
    assertEquals(List.of(), codes(of(QUIET.pump(SmallGarden.curveOf(400)).network())));
  }
}
