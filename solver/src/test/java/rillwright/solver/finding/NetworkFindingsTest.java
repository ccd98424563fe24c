package rillwright.solver.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.finding.SmallGarden.QUIET;
import static rillwright.solver.finding.SmallGarden.curve;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.LineParts.Pipe;
import rillwright.solver.building.NetworkBuilder;
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
