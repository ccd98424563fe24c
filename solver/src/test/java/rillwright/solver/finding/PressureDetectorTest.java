package rillwright.solver.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Network;
import rillwright.solver.network.PipeWall;
import rillwright.solver.network.PipeWall.WhenWarm;
import rillwright.solver.network.Run;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.water.Water;

/**
 * A pump of 30 m at no flow whose inlet the pond stands over, 20 m of 50 mm pipe, a wall of 2.5 mm
 * and 3 GPa: figures by hand.
 */
class PressureDetectorTest {
  private static final Bore BORE = new Bore(0.05);
  private static final List<WhenWarm> WARM = List.of(new WhenWarm(25, 1), new WhenWarm(45, 0.63));

  private static PipeWall wall(double ratedPa) {
    return new PipeWall(0.0025, 3e9, ratedPa, WARM);
  }

  private static Network network(double ratedPa, boolean swings, double celsius) {
    Run run =
        new Run(20, BORE, new Friction.Roughness(1e-5), "50 mm pipe", Optional.of(wall(ratedPa)));
    return new NetworkBuilder()
        .water(Water.at(celsius))
        .basin("pond", 0)
        .outlet("jet", 2)
        .line(
            "supply",
            "pond",
            "jet",
            LineParts.of()
                .pump("p", SmallGarden.curve(0, 30, 0.003, 20, 0.006, 0))
                .part(new CheckValve("check", 0, 2, BORE, swings))
                .part(run))
        .build();
  }

  private static List<Finding> found(Network network) {
    return new PressureDetector().findIn(SteadyStateFinder.find(network));
  }

  private static double figure(Finding finding, String name) {
    return finding.figures().stream()
        .filter(figure -> figure.name().equals(name))
        .mapToDouble(Figure::value)
        .findFirst()
        .orElseThrow();
  }

  /**
   * a = √(2.19e9/998.2) / √(1 + 2.19e9 · 0.05/(3e9 · 0.0025)) = 1481.2/√15.6 = 375 m/s (Korteweg);
   * in 20 m the wave comes back after 0.107 s, so that a closing of 0.5 s takes 2 ρ L v/0.5 s.
   */
  @Test
  void shutOffAndClosingSurgeAddUp() {
    assertEquals(375.0, wall(1e6).waveSpeedMPerS(BORE, Water.at(20)), 0.5);
    Network network = network(1e5, true, 20);
    SteadyState state = SteadyStateFinder.find(network);
    double velocity = BORE.velocityAt(state.lines().get(0).flowM3PerS());
    Finding finding = found(network).get(0);
    double density = network.water().densityKgPerM3();
    assertEquals(density * 9.80665 * 30, figure(finding, "shutOffPressure"), 1e-6);
    assertEquals(2 * density * 20 * velocity / 0.5, figure(finding, "surge"), 1e-6);
    assertEquals(1e5, figure(finding, "rating"));
  }

  /** 30 m of water are 2.94 bar. */
  @ParameterizedTest
  @CsvSource({"2.93e5, false, 1", "2.95e5, false, 0", "2.95e5, true, 1", "1e6, true, 0"})
  void onlyPipeThatIsNotMadeForItIsFound(double ratedPa, boolean swings, int findings) {
    assertEquals(findings, found(network(ratedPa, swings, 20)).size());
  }

  /** EN ISO 1452-2, annex A (from memory): 1 to 25 °C and 0.63 at 45 °C, so 0.7225 at 40 °C. */
  @ParameterizedTest
  @CsvSource({"10, 1", "25, 1", "35, 0.815", "40, 0.7225", "60, 0.63"})
  void aWarmPipeHoldsLess(double celsius, double share) {
    assertEquals(share * 1e6, wall(1e6).ratedPressureAt(celsius), 1e-6);
  }

  @Test
  void theRatingIsThatOfTheWatersTemperature() {
    assertEquals(List.of(), found(network(3.5e5, false, 20)));
    Finding warm = found(network(3.5e5, false, 40)).get(0);
    assertEquals(0.7225 * 3.5e5, figure(warm, "rating"), 1);
  }

  /** Behind a tee the pipe stands under the same head, computed from the tee's elevation. */
  @Test
  void pipeBehindATeeIsUnderTheSameHead() {
    Run run = new Run(5, BORE, new Friction.Roughness(1e-5), "hose", Optional.of(wall(2e5)));
    Network network =
        new NetworkBuilder()
            .basin("pond", 0)
            .tee("split", -1)
            .outlet("jet", 2)
            .line(
                "supply",
                "pond",
                "split",
                LineParts.in(LineParts.Pipe.of(0.05, 1e-5))
                    .pump("p", SmallGarden.curve(0, 30, 0.003, 20, 0.006, 0))
                    .run(2))
            .line(
                "up",
                "split",
                "jet",
                LineParts.in(LineParts.Pipe.of(0.05, 1e-5)).valve(ValveTravel.BALL, 1).part(run))
            .build();
    Finding finding = found(network).get(0);
    assertEquals("up", finding.at());
    assertEquals(
        network.water().densityKgPerM3() * 9.80665 * 31, figure(finding, "shutOffPressure"), 1e-6);
    assertTrue(finding.figures().stream().noneMatch(it -> it.name().equals("surge")));
  }
}
