package rillwright.solver.building;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.building.LineParts.Pipe;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.water.Water;

class NetworkBuilderTest {
  private static final Pipe PIPE = Pipe.of(0.05, 1e-5);
  private static final PumpCurve CURVE =
      new PumpCurve(List.of(new PumpPoint(0, 6), new PumpPoint(0.004, 0)));

  private static NetworkBuilder pondAndFall() {
    return new NetworkBuilder()
        .basin("pond", 0)
        .fall("fall", 1.5, PowerWeir.ofDischargeCoefficient(0.6, 0.5), 0.002);
  }

  @Test
  void keepsPointsAndLinesInTheirOrder() {
    Network network =
        new NetworkBuilder()
            .outlet("jet", 2)
            .basin("pond", 0)
            .tee("split", 0.5)
            .chamber("box", -1, -0.5)
            .line("b", "pond", "split", LineParts.in(PIPE).run(2))
            .line("a", "split", "jet", LineParts.in(PIPE).run(2))
            .build();
    assertEquals(
        List.of("jet", "pond", "split", "box"),
        network.points().stream().map(point -> point.name().value()).toList());
    assertEquals(
        List.of("b", "a"), network.lines().stream().map(line -> line.name().value()).toList());
  }

  @Test
  void putsEachPartIntoTheLinesPipe() {
    LineParts parts =
        LineParts.in(PIPE)
            .skimmer(0.3, -0.1)
            .pump("P-180", CURVE)
            .gauge("G1", 0)
            .checkValve(2)
            .valve(ValveTravel.GATE, 0.5)
            .run(12)
            .fittings("elbow 90", 3, 0.57);
    assertEquals(
        List.of("skimmer", "pump", "gauge", "check valve", "valve", "run", "fitting"),
        parts.parts().stream().map(Part::kind).toList());
    assertTrue(
        parts.parts().stream()
            .map(Part::bore)
            .flatMap(Optional::stream)
            .allMatch(new Bore(0.05)::equals));
  }

  /**
   * Half a velocity head in, a whole one out; nothing where a skimmer or a pump stands in the
   * water.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"run, 0.5", "pump, 0", "skimmer, 0"})
  void endsCostWhatEndsInSuchWaterDo(String first, double entering) {
    LineParts parts =
        switch (first) {
          case "pump" -> LineParts.in(PIPE).pump("P-180", CURVE);
          case "skimmer" -> LineParts.in(PIPE).skimmer(0.3, -0.1);
          default -> LineParts.in(PIPE);
        };
    Line line = pondAndFall().line("supply", "pond", "fall", parts.run(5)).build().lines().get(0);
    assertEquals(entering, line.entrance().loss().kEntering());
    assertEquals(1, line.exit().loss().kLeaving());
    assertEquals(Optional.of(new Bore(0.05)), line.exit().bore());
  }

  /**
   * Closed form: a fixed Darcy factor, the ends free, so that all of the difference in level is
   * friction: Q = A √(2 g h D / (f L)).
   */
  @Test
  void balancesAsTheFormulaSays() {
    Pipe textbook = new Pipe(new Bore(0.1), new Friction.DarcyFactor(0.02), "pipe");
    Network network =
        new NetworkBuilder()
            .basin("high", 3)
            .basin("low", 1)
            .line(
                "pipe", "high", "low", EndLoss.NONE, EndLoss.NONE, LineParts.in(textbook).run(100))
            .build();
    double expected = Math.PI / 4 * 0.01 * Math.sqrt(2 * 9.80665 * 2 * 0.1 / (0.02 * 100));
    SteadyState state = SteadyStateFinder.find(network);
    assertEquals(expected, state.line(new LineName("pipe")).flowM3PerS(), 1e-12);
  }

  @Test
  void takesWaterSiteAndTargets() {
    Network network =
        pondAndFall()
            .water(Water.at(5))
            .siteElevation(900)
            .line("supply", "pond", "fall", LineParts.in(PIPE).run(5))
            .build();
    assertEquals(Water.at(5), network.water());
    assertEquals(900, network.siteElevationM());
    Fall fall = (Fall) network.point(new PointName("fall"));
    assertEquals(0.002, fall.targetM3PerS().getAsDouble());
    assertEquals(0.5, fall.widthM().getAsDouble());
  }

  @Test
  void saysWhatIsMissing() {
    assertMessage(
        "there is no point \"pool\"; points come before the lines that join them",
        () -> pondAndFall().line("supply", "pool", "fall", LineParts.in(PIPE).run(5)));
    assertMessage("two points are called \"pond\"", () -> pondAndFall().basin("pond", 1));
    assertMessage(
        "length of a run is -5 m; it must be greater than 0", () -> LineParts.in(PIPE).run(-5));
    assertEquals(
        "this part stands in a pipe; begin with LineParts.in",
        assertThrows(IllegalStateException.class, () -> LineParts.of().run(5)).getMessage());
  }

  private static void assertMessage(String message, Executable construction) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, construction).getMessage());
  }
}
