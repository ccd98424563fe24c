package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.check;
import static rillwright.solver.steady.Sketch.gauge;
import static rillwright.solver.steady.Sketch.pipe;
import static rillwright.solver.steady.Sketch.pump;
import static rillwright.solver.steady.Sketch.shutValve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;

/** What a gauge has before it in a line without flow. */
class GaugesAtRestTest {
  private static final double[] SHEET = {0, 9, 0.004, 6, 0.008, 0};

  @Test
  void beforeAShutValveItHasThePondAndTheShutOffHead() {
    SteadyState state =
        line(
            "upper",
            5,
            pump(SHEET),
            gauge("one"),
            check(0),
            gauge("two"),
            shutValve(),
            gauge("three"),
            pipe(5, 0.05));
    assertEquals(9.5, at(state, "one").getAsDouble(), 1e-12);
    assertTrue(at(state, "two").isEmpty(), "between a closed check valve and a shut valve");
    assertEquals(5, at(state, "three").getAsDouble(), 1e-12);
  }

  @Test
  void withoutACheckValveItHasTheShutOffHeadUpToTheValve() {
    SteadyState state =
        line("upper", 5, pump(SHEET), pipe(5, 0.05), gauge("one"), shutValve(), gauge("two"));
    assertEquals(9.5, at(state, "one").getAsDouble(), 1e-12);
    assertEquals(5, at(state, "two").getAsDouble(), 1e-12);
  }

  @Test
  void behindAPumpThatIsTooWeakItHasTheHigherWaterBehindIt() {
    SteadyState state = line("upper", 20, gauge("one"), pump(SHEET), gauge("two"), pipe(5, 0.05));
    assertEquals(0.5, at(state, "one").getAsDouble(), 1e-12);
    assertEquals(20, at(state, "two").getAsDouble(), 1e-12);
  }

  @Test
  void behindAPumpThatIsTooWeakForAFallItHasTheShutOffHead() {
    SteadyState state =
        new Sketch()
            .basin("pond", 0.5)
            .fall("fall", 20)
            .line("line", "pond", "fall", pump(SHEET), gauge("one"), pipe(5, 0.05), gauge("two"))
            .solve();
    assertEquals(9.5, at(state, "one").getAsDouble(), 1e-12);
    assertEquals(9.5, at(state, "two").getAsDouble(), 1e-12);
  }

  @Test
  void withThePumpOffItHasTheWaterThatItsCheckValveHolds() {
    PumpSet off =
        new PumpSet(Sketch.curve(SHEET), 0, 1, PumpSet.Arrangement.PARALLEL, Optional.empty());
    SteadyState state =
        line("upper", 5, new Pump("off", off), gauge("one"), check(0), gauge("two"));
    assertTrue(at(state, "one").isEmpty(), "between a stopped pump and a closed check valve");
    assertEquals(5, at(state, "two").getAsDouble(), 1e-12);
  }

  @Test
  void whereWaterStandsBothWaysItHasThatLevel() {
    SteadyState state =
        new Sketch()
            .basin("pond", 0.5)
            .fall("fall", 2)
            .line("line", "pond", "fall", pipe(3, 0.05), gauge("one"), pipe(5, 0.05))
            .solve();
    assertEquals(0.5, at(state, "one").getAsDouble(), 1e-12);
  }

  @Test
  void runningItHasTheHeadAfterTheLossesBeforeIt() {
    SteadyState state = line("upper", 5, pump(SHEET), pipe(5, 0.05), gauge("one"), pipe(15, 0.05));
    LineState line = state.line(new LineName("line"));
    double perMetre = line.parts().get(1).headLossM().getAsDouble() / 5;
    assertEquals(5 + 15 * perMetre, at(state, "one").getAsDouble(), 1e-8);
  }

  private static SteadyState line(String to, double levelM, Part... parts) {
    SteadyState state =
        new Sketch().basin("pond", 0.5).basin(to, levelM).line("line", "pond", to, parts).solve();
    assertEquals(List.of(), BalanceAudit.faults(state));
    return state;
  }

  /** Total head before a gauge, m. */
  private static OptionalDouble at(SteadyState state, String gauge) {
    return state.line(new LineName("line")).parts().stream()
        .filter(part -> part.part() instanceof Gauge g && g.name().equals(gauge))
        .findFirst()
        .orElseThrow()
        .headBeforeM();
  }
}
