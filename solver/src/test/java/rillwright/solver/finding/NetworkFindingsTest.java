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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.LineParts.Pipe;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Network;
import rillwright.solver.network.PlannedPump;

/** What a network says that can hardly be, found before anything flows: plain geometry. */
class NetworkFindingsTest {
  private static final PowerWeir WEIR = new PowerWeir(1.6, 0.75, BrinkRule.FREE_OVERFALL);
  private static final Pipe PIPE = Pipe.of(0.08, 1.5e-6);

  private static List<String> codes(Network network) {
    return Findings.of(network).stream().map(it -> it.code() + " " + it.at()).toList();
  }

  private static Finding the(String code, Network network) {
    List<Finding> found =
        Findings.of(network).stream().filter(it -> it.code().equals(code)).toList();
    assertEquals(1, found.size(), () -> codes(network).toString());
    return found.get(0);
  }

  private static double figure(Finding finding, String name) {
    return finding.figures().stream()
        .filter(figure -> figure.name().equals(name))
        .mapToDouble(Figure::value)
        .findFirst()
        .orElseThrow();
  }

  private static Network siphon(double runM, double highM, double endM) {
    return new NetworkBuilder()
        .basin("pond", 0)
        .outlet("end", endM)
        .line(
            "way",
            "pond",
            "end",
            LineParts.in(PIPE).run(runM).part(new HighPoint(highM, Optional.empty())))
        .build();
  }

  @Test
  void nothingIsFoundOfASoundGarden() {
    assertEquals(List.of(), codes(QUIET.network()));
  }

  /** Up 1 m from the pond and 3 m down to the end: 4 m of pipe at the least. */
  @ParameterizedTest(name = "{0} m of pipe")
  @CsvSource({"3.99, true", "4, false", "9, false"})
  void pipeIsNoShorterThanItsClimbAndFall(double runM, boolean found) {
    Network network = siphon(runM, 1, -2);
    assertEquals(found ? List.of("short-run way") : List.of(), codes(network));
    if (found) {
      Finding shortRun = the("short-run", network);
      assertEquals(3.99, figure(shortRun, "length"), 0);
      assertEquals(4, figure(shortRun, "rise"), 1e-12);
    }
  }

  /** The shut-off head of 6.7 m from a pond at 0 m: not to 6.7 m. */
  @Test
  void crestAboveWhatShutOffReaches() {
    assertEquals(List.of(), codes(QUIET.crest(6.69, 0.75).network()));
    assertEquals(
        0.3, figure(the("beyond-shut-off", QUIET.crest(7, 0.75).network()), "aboveReach"), 1e-12);
    assertTrue(codes(QUIET.crest(6.7, 0.75).network()).contains("beyond-shut-off fall"));
  }

  @Test
  void pumpsInALineAddTheirHeads() {
    LineParts two =
        LineParts.in(PIPE)
            .pump("P-180", curve(0, 6.7, 0.006, 2))
            .pump("P-180", curve(0, 6.7, 0.006, 2))
            .run(30);
    Network network =
        new NetworkBuilder()
            .basin("pond", 0)
            .fall("fall", 13.3, WEIR)
            .line("supply", "pond", "fall", two)
            .build();
    assertEquals(List.of(), codes(network));
  }

  @Test
  void wayThatClimbsWithoutAPump() {
    Network network =
        new NetworkBuilder()
            .basin("pond", 0)
            .fall("fall", 2, WEIR)
            .line("way", "pond", "fall", LineParts.in(PIPE).run(9))
            .build();
    assertEquals(2, figure(the("no-pump", network), "aboveReach"), 1e-12);
    Network planned =
        new NetworkBuilder()
            .basin("pond", 0)
            .fall("fall", 2, WEIR)
            .line("way", "pond", "fall", LineParts.in(PIPE).part(new PlannedPump()).run(9))
            .build();
    assertEquals(List.of(), codes(planned));
  }

  @Test
  void crestFarAboveThePond() {
    assertEquals(
        290, figure(the("doubtful-level", QUIET.crest(290, 0.75).network()), "distance"), 1e-12);
    assertTrue(codes(QUIET.crest(290, 0.75).network()).contains("short-run supply"));
  }

  @Test
  void crestBelowThePondAndSillAboveIt() {
    assertEquals(List.of("crest-not-above-water fall"), codes(QUIET.crest(-0.1, 0.75).network()));
    assertEquals(0.1, figure(the("dry-skimmer", QUIET.level(-0.25).network()), "belowSill"), 1e-12);
  }

  /** The pump's intake lies at -0.9 m; a pond at that level just reaches it. */
  @Test
  void intakeAboveAllWaterThatCouldRunToIt() {
    assertEquals(
        0.2, figure(the("intake-above-water", QUIET.level(-1.1).network()), "aboveWater"), 1e-12);
    assertFalse(codes(QUIET.level(-0.9).network()).contains("intake-above-water chamber"));
  }

  /**
   * Q = 1.6 b h^1.5: 20 mm over 0.75 m are 3.394 L/s. Read in another unit it is 60 or 1,000 times
   * as much or as little; a few times as much is somebody's matter.
   */
  @ParameterizedTest(name = "{0} times")
  @CsvSource({"60, 60", "0.016666667, 60", "1000, 1000", "0.001, 1000", "3, 0", "0.3, 0"})
  void targetThatIsPlausibleInAnotherUnit(double times, double factor) {
    double usual = 1.6 * 0.75 * Math.pow(0.02, 1.5);
    Network network = QUIET.target(times * usual).network();
    if (factor == 0) {
      assertEquals(List.of(), codes(network));
    } else {
      Finding doubtful = the("doubtful-target", network);
      assertEquals(factor, figure(doubtful, "factor"), 0);
      assertEquals(0.02 * Math.pow(times, 2.0 / 3), figure(doubtful, "crestHead"), 1e-6);
    }
  }

  /**
   * ρ g Q H / P of 3 L/s, 5 m and 300 W is 0.49: 147 W in the water. Read in another unit the sheet
   * has 60, 1,000 or 3.6 times the flow or 2.31 times the head.
   */
  @ParameterizedTest(name = "{0} times the flow, {1} times the head")
  @CsvSource({
    "1, 1, 0, 0",
    "60, 1, 60, 0",
    "1000, 1, 1000, 0",
    "0.001, 1, 1000, 0",
    "0.016666667, 1, 60, 0",
    "3.6, 1, 3.6, 0",
    "1, 2.31, 3.6, 2.31",
    "1.5, 1, 0, 0",
    "0.4, 1, 0, 0"
  })
  void sheetWithPowersThatIsPlausibleInAnotherUnit(
      double flows, double heads, double flowFactor, double headFactor) {
    Network network =
        QUIET
            .pump(
                new PumpCurve(
                    List.of(
                        new PumpPoint(0, 6.7 * heads, OptionalDouble.of(300)),
                        new PumpPoint(0.003 * flows, 5 * heads, OptionalDouble.of(300)),
                        new PumpPoint(0.006 * flows, 2 * heads, OptionalDouble.of(300)))))
            .network();
    if (flowFactor == 0) {
      assertFalse(codes(network).contains("doubtful-sheet supply"), codes(network).toString());
      return;
    }
    Finding doubtful = the("doubtful-sheet", network);
    assertEquals(0.4903 * flows * heads, figure(doubtful, "wireToWater"), 1e-3 * flows * heads);
    assertEquals(flowFactor, figure(doubtful, "flowFactor"), 0);
    assertEquals(
        headFactor > 0,
        doubtful.figures().stream().anyMatch(figure -> figure.name().equals("headFactor")));
  }

  /** 6 L/s in a pipe of 80 mm run 1.19 m/s. */
  @ParameterizedTest(name = "{0} times")
  @CsvSource({"1, 0", "1000, 1000", "60, 60", "0.001, 1000", "0.016666667, 60", "5, 0", "0.1, 0"})
  void sheetWithoutPowersThatIsPlausibleInAnotherUnit(double times, double factor) {
    Network network =
        QUIET.pump(SmallGarden.curve(0, 6.7, 0.003 * times, 5, 0.006 * times, 2)).network();
    if (factor == 0) {
      assertFalse(codes(network).contains("doubtful-sheet supply"), codes(network).toString());
      return;
    }
    Finding doubtful = the("doubtful-sheet", network);
    assertEquals(1.1937 * times, figure(doubtful, "velocity"), 1e-3 * times);
    assertEquals(factor, figure(doubtful, "flowFactor"), 0);
  }

  @Test
  void lineDrawnFromTheFallToTheChamber() {
    Network network =
        new NetworkBuilder()
            .basin("pond", 0)
            .chamber("chamber", -1, -0.9)
            .fall("fall", 2, WEIR)
            .line("intake", "pond", "chamber", LineParts.of().skimmer(0.4, -0.15))
            .line(
                "supply",
                "fall",
                "chamber",
                LineParts.in(PIPE).pump("P-180", curve(0, 6.7, 0.006, 2)).run(12))
            .build();
    assertEquals("supply", the("ends-exchanged", network).at());
  }
}
