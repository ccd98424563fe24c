package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.fitting;
import static rillwright.solver.steady.Sketch.pipe;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.network.ChangeOfBore;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Part;

/** What runs of different bore take where they meet. */
class ChangeOfBoreTest {
  private static final double G = 9.80665;
  private static final double WIDE_M = 0.1;
  private static final double NARROW_M = 0.06;

  private static LineState line(double fromM, double toM, Part... parts) {
    return solved(fromM, toM, parts).lines().get(0);
  }

  /**
   * The closed form of two reservoirs: H = (f1 L1/d1 v1² + f2 L2/d2 v2² + K v²) / 2g, K v² of an
   * enlargement (v1 - v2)² (Borda and Carnot), of a contraction 0.5 (1 - (d/D)²) v² in the smaller.
   */
  @ParameterizedTest(name = "from {0} m to {1} m")
  @CsvSource({"0.06, 0.1, 3, 1", "0.1, 0.06, 3, 1", "0.06, 0.1, 1, 3", "0.1, 0.06, 1, 3"})
  void flowBetweenTwoReservoirs(double firstM, double secondM, double fromM, double toM) {
    LineState line = line(fromM, toM, pipe(20, firstM, 0.02), pipe(30, secondM, 0.025));
    double flow = Math.abs(line.flowM3PerS());
    double v1 = flow / (Math.PI / 4 * firstM * firstM);
    double v2 = flow / (Math.PI / 4 * secondM * secondM);
    boolean widens = (firstM < secondM) == (fromM > toM);
    double fast = Math.max(v1, v2);
    double change =
        widens
            ? (v1 - v2) * (v1 - v2)
            : 0.5 * (1 - NARROW_M * NARROW_M / (WIDE_M * WIDE_M)) * fast * fast;
    double friction = 0.02 * 20 / firstM * v1 * v1 + 0.025 * 30 / secondM * v2 * v2;
    assertEquals(2, (friction + change) / (2 * G), 1e-9);
    ChangeOfBore found = line.line().changesOfBore().get(0);
    assertEquals(
        Math.signum(fromM - toM) * change / (2 * G), line.headLossM(found).getAsDouble(), 1e-12);
  }

  private static Arguments between(String what, int changes, Part... parts) {
    List<Part> all =
        Stream.of(Stream.of(pipe(5, WIDE_M)), Stream.of(parts), Stream.of(pipe(5, NARROW_M)))
            .flatMap(each -> each)
            .map(Part.class::cast)
            .toList();
    return Arguments.of(what, changes, all);
  }

  static Stream<Arguments> betweenTwoRuns() {
    Optional<Bore> bore = Optional.of(new Bore(WIDE_M));
    VelocityHeadLoss loss = new VelocityHeadLoss(2, bore.get());
    return Stream.of(
        between("nothing", 1),
        between(
            "parts that take no part",
            1,
            fitting(0.3, 0.04),
            Sketch.check(0),
            Sketch.shutValve(),
            new Gauge("G", 0, bore),
            new HighPoint(0, bore)),
        between("a fitting by its K", 0, new Fitting("fitting", 1, loss, true)),
        between("a loss that the file states", 0, new Loss(loss, bore, true)),
        between("a loss that a study puts in", 1, new Loss(loss, bore)),
        between("a skimmer", 0, Sketch.skimmer(0.3, -0.1)),
        between("a run of its own bore", 2, pipe(1, 0.08)),
        between("a run of the same bore", 1, pipe(1, WIDE_M)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("betweenTwoRuns")
  void whatStandsBetweenMayStateItsOwnLoss(String what, int changes, List<Part> parts) {
    Line line =
        new Sketch()
            .basin("one", 1)
            .basin("other", 0)
            .line("line", "one", "other", parts.toArray(Part[]::new))
            .network()
            .lines()
            .get(0);
    assertEquals(changes, line.changesOfBore().size(), what);
  }

  @Test
  void aGaugeBehindItReadsWhatIsLeft() {
    Gauge gauge = new Gauge("G", 0, Optional.of(new Bore(WIDE_M)));
    LineState line = line(3, 1, pipe(5, NARROW_M, 0.02), pipe(5, WIDE_M, 0.02), gauge);
    double taken =
        line.parts().get(0).headLossM().getAsDouble()
            + line.parts().get(1).headLossM().getAsDouble()
            + line.headLossM(line.line().changesOfBore().get(0)).getAsDouble();
    assertEquals(3 - taken, line.parts().get(2).headBeforeM().getAsDouble(), 1e-9);
  }

  @Test
  void airBetweenTheRunsLeavesNoChange() {
    HighPoint vent = new HighPoint(2.5, Optional.of(new Bore(WIDE_M)), HighPoint.Air.VENTED, 90);
    SteadyState forward = solved(3, 1, pipe(5, NARROW_M), vent, pipe(5, WIDE_M));
    SteadyState backward = solved(1, 3, pipe(5, WIDE_M), vent, pipe(5, NARROW_M));
    for (SteadyState state : List.of(forward, backward)) {
      LineState line = state.lines().get(0);
      assertInstanceOf(Course.Vented.class, line.course());
      assertTrue(line.headLossM(line.line().changesOfBore().get(0)).isEmpty());
      assertEquals(List.of(), BalanceAudit.faults(state));
    }
    assertEquals(forward.lines().get(0).flowM3PerS(), -backward.lines().get(0).flowM3PerS(), 1e-12);
  }

  private static SteadyState solved(double fromM, double toM, Part... parts) {
    return new Sketch()
        .basin("one", fromM)
        .basin("other", toM)
        .line("line", "one", "other", parts)
        .solve();
  }
}
