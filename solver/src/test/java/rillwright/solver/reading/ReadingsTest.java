package rillwright.solver.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Bore;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.water.Water;

/**
 * The two gauges of a service call, one before and one after the check valve. The pump is the one
 * called P-400 among the invented demo pumps.
 */
class ReadingsTest {
  private static final Water WATER = new Water(1000, 1e-6, 2339);
  private static final double PA_PER_M = 1000 * 9.80665;
  private static final Bore TWO_INCH = new Bore(0.052);
  private static final LineEnd BARE = new LineEnd(EndLoss.OPEN_WATER, Optional.of(TWO_INCH));
  private static final double CREST_M = 1.85;

  private static final PumpCurve P_400 =
      new PumpCurve(
          List.of(
              point(0, 7.2),
              point(1, 6.9),
              point(2, 6.2),
              point(3, 5.05),
              point(4, 3.35),
              point(5.2, 0)));

  private static PumpPoint point(double litresPerS, double headM) {
    return new PumpPoint(litresPerS / 1000, headM, OptionalDouble.empty());
  }

  private static Gauge gauge(String name, double elevationM) {
    return new Gauge(name, elevationM, Optional.of(TWO_INCH));
  }

  private static Valve valve() {
    return new Valve("ball valve", new Valve.GivenLoss(0.1), TWO_INCH, false);
  }

  private static Pump pump() {
    return new Pump(
        "P-400", new PumpSet(P_400, 1, 1, PumpSet.Arrangement.PARALLEL, Optional.empty()));
  }

  private static Run run(double lengthM) {
    return new Run(lengthM, TWO_INCH, new Friction.Roughness(1e-5), "2 in");
  }

  private static Line line(String name, String from, String to, Part... parts) {
    return new Line(
        new LineName(name),
        new PointName(from),
        new PointName(to),
        Optional.of(TWO_INCH),
        List.of(parts),
        BARE,
        BARE);
  }

  private static Fall fall(String name, double crestM) {
    return new Fall(
        new PointName(name),
        crestM,
        new PowerWeir(1.6, 0.6, BrinkRule.FREE_OVERFALL),
        0.15,
        OptionalDouble.empty(),
        Optional.empty());
  }

  private static Network network(List<Fall> falls, Line... lines) {
    List<rillwright.solver.network.Point> points = new ArrayList<>();
    points.add(
        new Basin(
            new PointName("pond"),
            0,
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty()));
    boolean tee = falls.size() > 1;
    if (tee) {
      points.add(new Tee(new PointName("split"), OptionalDouble.empty(), 0));
    }
    points.addAll(falls);
    return new Network(WATER, 0, points, List.of(lines));
  }

  private static Network serviceCall(Part... afterPump) {
    List<Part> parts = new ArrayList<>(List.of(pump()));
    parts.addAll(List.of(afterPump));
    return network(
        List.of(fall("fall", CREST_M)), line("supply", "pond", "fall", parts.toArray(Part[]::new)));
  }

  private static CheckValve checkValve() {
    return new CheckValve("swing check valve", 0, 2, TWO_INCH);
  }

  private static List<OptionalDouble> pressures(List<GaugeReading> readings) {
    return readings.stream().map(GaugeReading::pressurePa).toList();
  }

  @Test
  void aRunningGaugeReadsTheHeadThereLessItsElevationAndVelocityHead() {
    Network network = serviceCall(gauge("G1", 0.2), run(26));
    var state = SteadyStateFinder.find(network);
    var line = state.line(new LineName("supply"));
    double flow = line.flowM3PerS();
    double head = P_400.headAt(flow) - line.entranceLossM();
    double expected = PA_PER_M * (head - 0.2 - TWO_INCH.velocityHeadAt(flow));
    assertEquals(
        expected, GaugeReading.listIn(state).get(0).pressurePa().orElseThrow(), 1e-6 * expected);
  }

  @Test
  void withThePumpOffTheWaterBehindTheCheckValveStandsAtTheCrest() {
    Network network = serviceCall(gauge("G1", 0), checkValve(), gauge("G2", 0), run(26));
    List<OptionalDouble> readings = pressures(PumpsOff.listReadings(network));
    assertTrue(readings.get(0).isEmpty(), "before the check valve nothing holds a level");
    assertEquals(PA_PER_M * CREST_M, readings.get(1).orElseThrow(), 1e-6);
  }

  @Test
  void withThePumpOffTheWaterDrainsToTheLowerOfTwoFalls() {
    Network network =
        network(
            List.of(fall("low", 1.2), fall("high", 2.4)),
            line("supply", "pond", "split", pump(), checkValve(), gauge("G2", -0.3)),
            line("to low", "split", "low", run(5)),
            line("to high", "split", "high", run(5)));
    assertEquals(
        PA_PER_M * 1.5, PumpsOff.listReadings(network).get(0).pressurePa().orElseThrow(), 1e-6);
  }

  @Test
  void withoutACheckValveTheWaterRunsBackAndThereIsNoReading() {
    Network network = serviceCall(gauge("G1", 0), run(26));
    assertTrue(PumpsOff.listReadings(network).get(0).pressurePa().isEmpty());
  }

  @Test
  void withTheValveShutTheGaugeBeforeItReadsThePumpsShutOffHead() {
    Network network = serviceCall(gauge("G1", 0), checkValve(), valve(), gauge("G2", 0), run(26));
    ShutOff shutOff = ShutOff.of(network, PumpPlace.listChosen(network).get(0)).orElseThrow();
    assertEquals(List.of(new LineName("supply")), shutOff.shutIn());
    assertEquals(
        1, shutOff.readings().size(), "the gauge downstream of the valve says nothing of it");
    assertEquals(
        PA_PER_M * 7.2, shutOff.readings().get(0).pressurePa().orElseThrow(), 1e-6 * PA_PER_M);
  }

  @Test
  void withoutAValveInItsOwnLineThoseOfAllBranchesAreShut() {
    Network network =
        network(
            List.of(fall("low", 1.2), fall("high", 2.4)),
            line("supply", "pond", "split", pump(), gauge("G1", 0)),
            line("to low", "split", "low", valve(), run(5)),
            line("to high", "split", "high", run(5), valve()));
    ShutOff shutOff = ShutOff.of(network, PumpPlace.listChosen(network).get(0)).orElseThrow();
    assertEquals(List.of(new LineName("to low"), new LineName("to high")), shutOff.shutIn());
    assertEquals(
        PA_PER_M * 7.2, shutOff.readings().get(0).pressurePa().orElseThrow(), 1e-6 * PA_PER_M);
  }

  @Test
  void aBranchWithoutAValveLeavesNoSuchTest() {
    Network network =
        network(
            List.of(fall("low", 1.2), fall("high", 2.4)),
            line("supply", "pond", "split", pump(), gauge("G1", 0)),
            line("to low", "split", "low", valve(), run(5)),
            line("to high", "split", "high", run(5)));
    assertTrue(ShutOff.of(network, PumpPlace.listChosen(network).get(0)).isEmpty());
  }

  @Test
  void behindASkimmerWithoutFlowTheChamberHasFilledUpToThePond() {
    Network open =
        network(
            List.of(fall("fall", CREST_M)),
            line("supply", "pond", "fall", pump(), gauge("G1", 0), checkValve(), valve(), run(26)));
    List<rillwright.solver.network.Point> points = new ArrayList<>(open.points());
    points.add(
        new Chamber(
            new PointName("chamber"), -1, -0.7, OptionalDouble.empty(), OptionalDouble.empty()));
    Skimmer mouth = new Skimmer(0.4, OptionalDouble.empty(), -0.09, Skimmer.WITH_DOOR, 0);
    Network network =
        new Network(
            WATER,
            0,
            points,
            List.of(
                line("intake", "pond", "chamber", mouth),
                line(
                    "supply",
                    "chamber",
                    "fall",
                    open.lines().get(0).parts().toArray(Part[]::new))));
    ShutOff shutOff = ShutOff.of(network, PumpPlace.listChosen(network).get(0)).orElseThrow();
    assertEquals(
        PA_PER_M * 7.2, shutOff.readings().get(0).pressurePa().orElseThrow(), 1e-6 * PA_PER_M);
  }
}
