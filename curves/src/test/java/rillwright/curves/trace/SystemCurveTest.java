package rillwright.curves.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.pumping.StaticHead;
import rillwright.solver.water.Water;

class SystemCurveTest {
  private static final double REACH_M3_PER_S = 0.004;

  private static Network network(List<Point> points, Line... lines) {
    return new Network(new Water(1000, 1e-6, 2000), 0, points, List.of(lines));
  }

  private static Line line(String name, String from, String to, Part... parts) {
    LineEnd free = new LineEnd(EndLoss.NONE, Optional.empty());
    return new Line(
        new LineName(name),
        new PointName(from),
        new PointName(to),
        Optional.empty(),
        List.of(parts),
        free,
        free);
  }

  private static Basin basin(String name, double levelM) {
    return new Basin(
        new PointName(name),
        levelM,
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  private static Outlet outletInAir(String name, double elevationM) {
    return outletInAir(name, elevationM, OptionalDouble.empty());
  }

  private static Outlet outletInAir(String name, double elevationM, double targetM3PerS) {
    return outletInAir(name, elevationM, OptionalDouble.of(targetM3PerS));
  }

  private static Outlet outletInAir(String name, double elevationM, OptionalDouble targetM3PerS) {
    return new Outlet(
        new PointName(name), elevationM, OptionalDouble.empty(), Optional.empty(), targetM3PerS);
  }

  /** 3 m at 3 L/s, with the square of the flow. */
  private static Loss loss() {
    return new Loss(new PowerLoss(3, 0.003, 2), Optional.empty());
  }

  private static double lossAt(double flow) {
    return 3 * flow * flow / (0.003 * 0.003);
  }

  private static SystemCurve trace(Network network) {
    return SystemCurve.trace(network, PumpPlace.listPlanned(network).get(0), REACH_M3_PER_S);
  }

  private static double headOnTheChords(SystemCurve curve, double flow) {
    for (int i = 1; i < curve.points().size(); i++) {
      var from = curve.points().get(i - 1);
      var to = curve.points().get(i);
      if (flow <= to.flowM3PerS()) {
        double share = (flow - from.flowM3PerS()) / (to.flowM3PerS() - from.flowM3PerS());
        return from.headM() + share * (to.headM() - from.headM());
      }
    }
    throw new AssertionError("the curve ends before " + flow);
  }

  private static void assertFollows(DoubleUnaryOperator exact, SystemCurve curve, double shareOff) {
    double tallest = exact.applyAsDouble(REACH_M3_PER_S);
    for (int i = 0; i <= 1000; i++) {
      double flow = REACH_M3_PER_S * i / 1000;
      assertEquals(
          exact.applyAsDouble(flow),
          headOnTheChords(curve, flow),
          shareOff * tallest,
          "at " + flow);
    }
    for (int i = 1; i < curve.points().size(); i++) {
      assertTrue(curve.points().get(i).flowM3PerS() > curve.points().get(i - 1).flowM3PerS());
    }
    assertTrue(curve.points().size() < 150, curve.points().size() + " points");
  }

  @Test
  void oneLineNeedsItsLiftAndItsLoss() {
    SystemCurve curve =
        trace(
            network(
                List.of(basin("pond", 0), basin("tank", 2)),
                line("supply", "pond", "tank", new PlannedPump(), loss())));
    assertEquals(OptionalDouble.empty(), curve.greatestFlowM3PerS());
    assertFollows(flow -> 2 + lossAt(flow), curve, 0.0015);
  }

  @Test
  void whereFallsAreHeldToOneShareTheNeediestDecides() {
    Network network =
        network(
            List.of(
                basin("pond", 0),
                new Tee(new PointName("split"), OptionalDouble.empty(), 0),
                outletInAir("low", 1, 0.002),
                outletInAir("high", 1.5, 0.001)),
            line("supply", "pond", "split", new PlannedPump()),
            line("to low", "split", "low", loss()),
            line("to high", "split", "high", loss()));
    SystemCurve curve =
        SystemCurve.traceThrottled(network, PumpPlace.listPlanned(network).get(0), REACH_M3_PER_S);
    assertFollows(flow -> Math.max(1 + lossAt(flow * 2 / 3), 1.5 + lossAt(flow / 3)), curve, 0.003);
  }

  @Test
  void whatAFlapperTakesToOpenIsNoStaticHead() {
    CheckValve flapper = new CheckValve("flapper", 0.2, 1, new Bore(0.05));
    SystemCurve curve =
        trace(
            network(
                List.of(basin("pond", 0), basin("tank", 2)),
                line("supply", "pond", "tank", new PlannedPump(), flapper, loss())));
    StaticHead head = curve.staticHead().orElseThrow();
    assertEquals(2, head.headM(), 1e-9);
    assertEquals(0.2, head.openingM(), 1e-9);
    assertEquals(2.2, curve.points().get(0).headM(), 1e-9);
  }

  @Test
  void aHigherOutletStartsLaterAndTheCurveBendsThere() {
    SystemCurve curve =
        trace(
            network(
                List.of(
                    basin("pond", 0),
                    new Tee(new PointName("split"), OptionalDouble.empty(), 0),
                    outletInAir("low", 1),
                    outletInAir("high", 3)),
                line("supply", "pond", "split", new PlannedPump()),
                line("to low", "split", "low", loss()),
                line("to high", "split", "high", loss())));
    double bend = 0.003 * Math.sqrt(2.0 / 3);
    assertFollows(flow -> flow <= bend ? 1 + lossAt(flow) : bothRunning(flow), curve, 0.003);
    long near =
        curve.points().stream()
            .filter(point -> Math.abs(point.flowM3PerS() - bend) < 0.02 * REACH_M3_PER_S)
            .count();
    assertTrue(near >= 3, near + " points near the bend");
  }

  /**
   * Head H at the split with both outlets running: a flow of √((H − 1)/c) + √((H − 3)/c), solved
   * for H by halving.
   */
  private static double bothRunning(double flow) {
    double low = 3;
    double high = 100;
    for (int i = 0; i < 200; i++) {
      double head = (low + high) / 2;
      double carried = 0.003 * (Math.sqrt((head - 1) / 3) + Math.sqrt((head - 3) / 3));
      if (carried < flow) {
        low = head;
      } else {
        high = head;
      }
    }
    return low;
  }

  @Test
  void theCurveEndsWhereTheSkimmerPassesNoMore() {
    Skimmer mouth = new Skimmer(0.2, OptionalDouble.empty(), -0.05, 0.36, 0);
    SystemCurve curve =
        trace(
            network(
                List.of(
                    basin("pond", 0),
                    new Chamber(
                        new PointName("chamber"),
                        -1,
                        -0.8,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                    basin("tank", 2)),
                line("intake", "pond", "chamber", mouth),
                line("supply", "chamber", "tank", new PlannedPump(), loss())));
    // A free weir over the sill: 2/3 Cd b √(2g) h^1.5.
    double free = 2.0 / 3 * 0.36 * 0.2 * Math.sqrt(2 * 9.80665) * Math.pow(0.05, 1.5);
    assertEquals(free, curve.greatestFlowM3PerS().orElseThrow(), 1e-6 * free);
    var last = curve.points().get(curve.points().size() - 1);
    assertEquals(free, last.flowM3PerS(), 1e-6 * free);
  }

  /** A target a thousand times what the line can carry: the curve is not traced to the sky. */
  @Test
  void endsAtTheFirstPointThatNoPumpReaches() {
    Network network =
        network(
            List.of(basin("pond", 0), outletInAir("end", 1, 3)),
            line("run", "pond", "end", new PlannedPump(), loss()));
    SystemCurve curve =
        SystemCurve.traceThrottled(network, PumpPlace.listPlanned(network).get(0), 6);
    List<Double> heads = curve.points().stream().map(point -> point.headM()).toList();
    assertTrue(heads.get(heads.size() - 1) > 500, () -> "" + heads);
    assertTrue(heads.get(0) < 2, () -> "" + heads);
    assertEquals(1, heads.stream().filter(head -> head > lossAt(6.0 / 24)).count());
  }
}
