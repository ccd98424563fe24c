package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.fitting;
import static rillwright.solver.steady.Sketch.flow;
import static rillwright.solver.steady.Sketch.head;
import static rillwright.solver.steady.Sketch.isOpen;
import static rillwright.solver.steady.Sketch.outflow;
import static rillwright.solver.steady.Sketch.pipe;
import static rillwright.solver.steady.Sketch.pump;
import static rillwright.solver.steady.Sketch.quadratic;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Nozzle;
import rillwright.solver.network.Pump;

/**
 * Pumps side by side, against each other and beyond their sheets; outlets in air and under water.
 */
class PumpsAndOutletsTest {
  private static final double TWO_G = 2 * 9.80665;

  private SteadyState state;

  @AfterEach
  void balances() {
    assertEquals(List.of(), BalanceAudit.faults(state));
  }

  @Test
  void theWeakerOfTwoPumpsSideBySideIsHeldShut() {
    Sketch alone = intoFall().line("strong", "pond", "T", pump(0, 10, 0.004, 0));
    Sketch both =
        intoFall()
            .line("strong", "pond", "T", pump(0, 10, 0.004, 0))
            .line("weak", "pond", "T", pump(0, 3, 0.004, 0));
    double expected = flow(alone.solve(), "strong");
    state = both.solve();
    assertEquals(0, flow(state, "weak"));
    assertFalse(isOpen(state, "weak"));
    assertEquals(expected, flow(state, "strong"), 1e-12);
  }

  /** A pipe as thin as a hair beside a wide one, and one that is nearly shut before both. */
  @ParameterizedTest(name = "{0} m")
  @ValueSource(doubles = {1e-4, 1.358e-4, 2e-4, 1e-5})
  void aPipeAsThinAsAHairIsBalanced(double thin) {
    state =
        new Sketch()
            .basin("pond", 0)
            .tee("T")
            .tee("end")
            .fall("fall", 1)
            .line("supply", "pond", "T", pump(0, 7, 0.006, 0), pipe(34, 4.6e-3))
            .line("wide", "T", "end", pipe(35, 0.727))
            .line("thin", "T", "end", pipe(31, thin))
            .line("over", "T", "fall", pipe(22, 0.057))
            .solve();
    assertEquals(0, flow(state, "thin"), 1e-12);
    assertEquals(outflow(state, "fall"), flow(state, "supply"), 1e-12);
  }

  private static Sketch intoFall() {
    return new Sketch()
        .basin("pond", 0)
        .tee("T")
        .fall("fall", 5)
        .line("over", "T", "fall", pipe(5, 0.05));
  }

  @Test
  void twoUnequalPumpsShareWhatBothCanLift() {
    state =
        intoFall()
            .line("one", "pond", "T", pump(0, 10, 0.004, 0))
            .line("other", "pond", "T", pump(0, 8, 0.004, 0))
            .solve();
    assertTrue(flow(state, "one") > flow(state, "other") && flow(state, "other") > 0);
    assertEquals(outflow(state, "fall"), flow(state, "one") + flow(state, "other"), 1e-14);
  }

  @Test
  void aPumpBeyondItsSheetFollowsItsLastSlope() {
    state =
        new Sketch()
            .basin("upper", 3)
            .basin("lower", 0)
            .line("line", "upper", "lower", pump(0, 4, 0.002, 2), quadratic(1e5))
            .solve();
    // 3 + 4 − 1000 Q = 1e5 Q²
    double expected = (-1000 + Math.sqrt(1e6 + 4 * 1e5 * 7)) / 2e5;
    assertEquals(expected, flow(state, "line"), 1e-9 * expected);
    assertTrue(expected > 2 * 0.002);
  }

  @Test
  void aPumpThatLetsWaterBackIsOverwhelmed() {
    Bore bore = new Bore(0.04);
    PumpSet set =
        new PumpSet(
            Sketch.curve(0, 4, 0.002, 2),
            1,
            1,
            PumpSet.Arrangement.PARALLEL,
            Optional.of(new VelocityHeadLoss(15, bore)));
    state = lowerToUpper(new Pump("weak", set));
    // Backwards: 10 = 4 + 1000 Q + (1e5 + K/(2gA²)) Q²
    double k = 1e5 + 15 / (TWO_G * bore.areaM2() * bore.areaM2());
    double expected = (-1000 + Math.sqrt(1e6 + 4 * k * 6)) / (2 * k);
    assertEquals(-expected, flow(state, "line"), 1e-9 * expected);
    assertTrue(isOpen(state, "line"));
  }

  @Test
  void aStoppedPumpThatLetsWaterBackIsAFitting() {
    Bore bore = new Bore(0.04);
    PumpSet set =
        new PumpSet(
            Sketch.curve(0, 4, 0.002, 2),
            0,
            1,
            PumpSet.Arrangement.PARALLEL,
            Optional.of(new VelocityHeadLoss(15, bore)));
    state = lowerToUpper(new Pump("stopped", set));
    double k = 1e5 + 15 / (TWO_G * bore.areaM2() * bore.areaM2());
    assertEquals(-Math.sqrt(10 / k), flow(state, "line"), 1e-9 * Math.sqrt(10 / k));
  }

  @Test
  void aStoppedPumpIsShut() {
    PumpSet set =
        new PumpSet(
            Sketch.curve(0, 4, 0.002, 2), 0, 1, PumpSet.Arrangement.PARALLEL, Optional.empty());
    state = lowerToUpper(new Pump("stopped", set));
    assertEquals(0, flow(state, "line"));
    assertFalse(isOpen(state, "line"));
  }

  private static SteadyState lowerToUpper(Pump pump) {
    return new Sketch()
        .basin("lower", 0)
        .basin("upper", 10)
        .line("line", "lower", "upper", pump, quadratic(1e5))
        .solve();
  }

  @Test
  void anOutletInAirDoesNotSuck() {
    for (Optional<Nozzle> nozzle : List.of(Optional.<Nozzle>empty(), nozzle())) {
      state =
          new Sketch()
              .basin("pond", 0)
              .basin("ditch", -2)
              .tee("T")
              .outlet("end", 3, OptionalDouble.empty(), nozzle)
              .line("down", "pond", "T", pipe(5, 0.05))
              .line("on", "T", "ditch", pipe(5, 0.05))
              .line("up", "T", "end", pipe(5, 0.05))
              .solve();
      assertEquals(0, outflow(state, "end"));
      assertEquals(0, flow(state, "up"));
      assertEquals(head(state, "T"), head(state, "end"), 1e-12);
      assertTrue(flow(state, "down") > 1e-3);
    }
  }

  @Test
  void twoLinesMeetAtOneOutlet() {
    state =
        new Sketch()
            .basin("pond", 2)
            .outlet("end", 0)
            .line("one", "pond", "end", pipe(5, 0.05))
            .line("other", "pond", "end", pipe(5, 0.05))
            .line("third", "pond", "end", pipe(50, 0.05))
            .solve();
    assertEquals(flow(state, "one"), flow(state, "other"), 1e-15);
    assertEquals(
        flow(state, "one") + flow(state, "other") + flow(state, "third"),
        outflow(state, "end"),
        1e-14);
    assertEquals(0, head(state, "end"), 1e-12);
  }

  @Test
  void oneOfTwoLinesAtAnOutletMayLeadAway() {
    state =
        new Sketch()
            .basin("pond", 2)
            .basin("ditch", -3)
            .outlet("end", 0)
            .line("to", "pond", "end", pipe(5, 0.05))
            .line("away", "end", "ditch", pipe(50, 0.03))
            .solve();
    assertTrue(outflow(state, "end") > 0 && flow(state, "away") > 0);
    assertEquals(flow(state, "to"), flow(state, "away") + outflow(state, "end"), 1e-14);
  }

  @ParameterizedTest(name = "pond at {0} m")
  @ValueSource(doubles = {4, 1.5, 1.000001, 1, 0.5, -2})
  void aNozzleUnderWaterWorksBothWays(double level) {
    state =
        new Sketch()
            .basin("pond", level)
            .outlet("end", 0.2, OptionalDouble.of(1), nozzle())
            .line("line", "pond", "end", fitting(3, 0.03))
            .solve();
    double pipeArea = Math.PI / 4 * 0.03 * 0.03;
    double nozzleArea = 0.95 * Math.PI / 4 * 0.012 * 0.012;
    double k = (3 / (pipeArea * pipeArea) + 1 / (nozzleArea * nozzleArea)) / TWO_G;
    double expected = Math.signum(level - 1) * Math.sqrt(Math.abs(level - 1) / k);
    assertEquals(expected, outflow(state, "end"), Math.max(1e-9 * Math.abs(expected), 1e-9));
  }

  private static Optional<Nozzle> nozzle() {
    return Optional.of(new Nozzle(new Bore(0.012), 0.95));
  }
}
