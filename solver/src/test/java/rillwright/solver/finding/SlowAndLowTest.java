package rillwright.solver.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.LineParts.Pipe;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Filter;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Water that creeps in gravity pipes and pumps that pass too little for what they are. */
class SlowAndLowTest {

  private static Optional<Finding> find(String code, SteadyState state) {
    List<Finding> found = Findings.of(state).stream().filter(it -> it.code().equals(code)).toList();
    assertTrue(found.size() < 2, found.toString());
    return found.stream().findFirst();
  }

  private static double figure(Finding finding, String name) {
    return finding.figures().stream()
        .filter(figure -> figure.name().equals(name))
        .mapToDouble(Figure::value)
        .findFirst()
        .orElseThrow();
  }

  private static Network drain(double drawM3PerS, double insideM) {
    return new NetworkBuilder()
        .basin("pond", 0)
        .tee("end", -1, drawM3PerS)
        .line("drain", "pond", "end", LineParts.in(Pipe.of(insideM, 1.5e-6)).run(10))
        .build();
  }

  /** 0.2 m/s in 110 mm: 0.2 · π/4 · 0.11² = 1.9007 L/s. Common practice, no source. */
  @Test
  void gravityLineBelowAFifthOfAMetreASecondSiltsUp() {
    SteadyState slow = SteadyStateFinder.find(drain(0.00189, 0.11));
    Finding finding = find("slow-gravity-line", slow).orElseThrow();
    assertEquals("drain", finding.at());
    assertEquals(0.00189 / new Bore(0.11).areaM2(), figure(finding, "velocity"), 1e-9);
    assertEquals(
        Optional.empty(), find("slow-gravity-line", SteadyStateFinder.find(drain(0.00191, 0.11))));
    assertEquals(
        Optional.empty(), find("slow-gravity-line", SteadyStateFinder.find(drain(0, 0.11))));
  }

  @Test
  void nobodyReachesAPipeBetweenStones() {
    Network open = drain(0.002, 0.11);
    Basin pond = (Basin) open.point(new PointName("pond"));
    Basin stones =
        new Basin(
            pond.name(),
            pond.levelM(),
            pond.shape(),
            pond.overflowM(),
            pond.gradeM(),
            pond.linerEdgeM(),
            pond.leastLevelM(),
            pond.evaporatesM2(),
            true);
    assertTrue(find("open-suction", SteadyStateFinder.find(open)).isPresent());
    assertEquals(
        Optional.empty(), find("open-suction", SteadyStateFinder.find(open.withPoint(stones))));
  }

  /** 0.5 m² below a top 0.2 m above the water, at 1 L/s: 100 s and what the pipe takes of it. */
  @Test
  void blockedMatsFillTheChamberBeforeThem() {
    Bore bore = new Bore(0.1);
    Network network =
        new NetworkBuilder()
            .basin("pond", 0)
            .point(
                new Chamber(
                    new PointName("settling"),
                    -1,
                    -0.9,
                    OptionalDouble.of(0.2),
                    OptionalDouble.of(0.5)))
            .tee("end", -1, 0.001)
            .line("in", "pond", "settling", LineParts.in(Pipe.of(0.1, 1.5e-6)).run(1))
            .line(
                "mats",
                "settling",
                "end",
                LineParts.of(
                    new Filter(new VelocityHeadLoss(1, bore), 0, OptionalDouble.empty(), 0)))
            .build();
    SteadyState state = SteadyStateFinder.find(network);
    double room = 0.2 - state.point(new PointName("settling")).headM().orElseThrow();
    Finding finding = find("if-mats-blocked", state).orElseThrow();
    assertEquals(0.001, figure(finding, "flow"), 1e-12);
    assertEquals(0.5 * room / 0.001, figure(finding, "timeToTop"), 1e-6);
    assertEquals(100, figure(finding, "timeToTop"), 5);
  }

  @Test
  void pumpedLineIsNotAGravityLine() {
    SteadyState wide = SteadyStateFinder.find(SmallGarden.QUIET.pipe(0.3).network());
    assertTrue(wide.line(new LineName("supply")).velocityMPerS().orElseThrow() < 0.2);
    assertEquals(Optional.empty(), find("slow-gravity-line", wide));
  }

  private static PumpCurve straight(double shutOffM, double rangeM3PerS, OptionalDouble watts) {
    return new PumpCurve(
        List.of(new PumpPoint(0, shutOffM, watts), new PumpPoint(rangeM3PerS, 0, watts)));
  }

  /** A straight curve with the same watts everywhere is best in the middle: Q (1 − Q/R) is. */
  @Test
  void pumpBelowAQuarterOfItsBestFlow() {
    SteadyState low =
        SteadyStateFinder.find(
            SmallGarden.QUIET
                .pump(straight(2.4, 0.05, OptionalDouble.of(2000)))
                .target(1e-4)
                .network());
    Finding finding = find("below-minimum-flow", low).orElseThrow();
    double flow = low.line(new LineName("supply")).flowM3PerS();
    assertEquals(flow / 0.025, figure(finding, "shareOfBestEfficiencyFlow"), 1e-6);
    assertTrue(flow / 0.025 < 0.25);
    assertEquals(Optional.empty(), find("near-shut-off", low));
    SteadyState well =
        SteadyStateFinder.find(
            SmallGarden.QUIET.pump(straight(4, 0.02, OptionalDouble.of(2000))).network());
    assertTrue(well.line(new LineName("supply")).flowM3PerS() > 0.25 * 0.01);
    assertEquals(Optional.empty(), find("below-minimum-flow", well));
  }

  @Test
  void withoutPowerTheLeastFlowIsNotKnown() {
    SteadyState low =
        SteadyStateFinder.find(
            SmallGarden.QUIET
                .pump(straight(2.3, 0.05, OptionalDouble.empty()))
                .target(1e-4)
                .network());
    assertEquals(Optional.empty(), find("below-minimum-flow", low));
    assertTrue(find("near-shut-off", low).isPresent());
  }
}
