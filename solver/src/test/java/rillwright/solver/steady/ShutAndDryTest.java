package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.check;
import static rillwright.solver.steady.Sketch.flow;
import static rillwright.solver.steady.Sketch.head;
import static rillwright.solver.steady.Sketch.isDetermined;
import static rillwright.solver.steady.Sketch.isOpen;
import static rillwright.solver.steady.Sketch.outflow;
import static rillwright.solver.steady.Sketch.pipe;
import static rillwright.solver.steady.Sketch.pump;
import static rillwright.solver.steady.Sketch.shutValve;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.filter.TwoTermLoss;
import rillwright.solver.network.Filter;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;

/** What stands still: what is reported there, and what nothing determines. */
class ShutAndDryTest {
  private SteadyState state;

  @AfterEach
  void balances() {
    assertEquals(List.of(), BalanceAudit.faults(state));
  }

  @Test
  void dryFallReachedByOpenPipeReportsTheLevelBelowItsCrest() {
    state =
        new Sketch()
            .basin("pond", 0.4)
            .tee("T")
            .fall("fall", 1)
            .line("one", "pond", "T", pipe(5, 0.05))
            .line("two", "T", "fall", pipe(5, 0.05))
            .solve();
    assertEquals(0, flow(state, "one"));
    assertEquals(0, outflow(state, "fall"));
    assertEquals(0.4, head(state, "fall"), 1e-12);
    assertTrue(isOpen(state, "one") && isOpen(state, "two"));
    assertEquals(0, state.line(new LineName("two")).headLossM().getAsDouble(), 1e-12);
  }

  @Test
  void aFallIsDryWhileALowerOneRuns() {
    state =
        new Sketch()
            .basin("pond", 0)
            .tee("T")
            .fall("low", 1)
            .fall("high", 6)
            .line("supply", "pond", "T", pump(0, 5, 0.004, 0), pipe(5, 0.05))
            .line("to low", "T", "low", pipe(5, 0.05))
            .line("to high", "T", "high", pipe(5, 0.05))
            .solve();
    assertTrue(outflow(state, "low") > 1e-3);
    assertEquals(0, flow(state, "to high"));
    assertEquals(head(state, "T"), head(state, "high"), 1e-12);
    assertTrue(isOpen(state, "to high"));
  }

  @Test
  void nothingDeterminesWhatLiesBehindAShutValve() {
    assertCutOff(shutValve());
  }

  @Test
  void nothingDeterminesWhatLiesBehindACheckValve() {
    assertCutOff(check(0));
  }

  @Test
  void nothingDeterminesWhatLiesBehindAPumpThatIsTooWeak() {
    assertCutOff(pump(0, 3, 0.004, 0));
  }

  @Test
  void nothingDeterminesWhatLiesBehindAFilterThatIsAllClogged() {
    assertCutOff(new Filter(new TwoTermLoss(1, 1), 1, OptionalDouble.empty(), 0));
  }

  /**
   * The pond lies lower than the fall and a basin downstream of it, so that a check valve is
   * closed.
   */
  private void assertCutOff(Part part) {
    state =
        new Sketch()
            .basin("pond", 0)
            .tee("T")
            .fall("fall", 4)
            .line("supply", "pond", "T", pipe(5, 0.05), part)
            .line("over", "T", "fall", pipe(5, 0.05))
            .solve();
    assertEquals(0, flow(state, "supply"));
    assertFalse(isOpen(state, "supply"));
    assertTrue(isOpen(state, "over"));
    for (String cutOff : List.of("T", "fall")) {
      assertFalse(isDetermined(state, cutOff), cutOff);
      assertTrue(state.point(new PointName(cutOff)).headM().isEmpty());
    }
    assertTrue(state.line(new LineName("supply")).headLossM().isEmpty());
    assertTrue(state.line(new LineName("over")).headLossM().isEmpty());
  }

  @Test
  void aCheckValveHoldsBackAHigherBasinToTheLastDrop() {
    state =
        new Sketch()
            .basin("pond", 0)
            .basin("upper", 3)
            .line("line", "pond", "upper", pipe(5, 0.05), check(0))
            .solve();
    assertEquals(0, flow(state, "line"));
    assertFalse(isOpen(state, "line"));
    assertEquals(-3, state.line(new LineName("line")).headLossM().getAsDouble());
  }

  @Test
  void aCheckValveStaysClosedUpToItsCrackingHead() {
    state = cracking(0.4);
    assertEquals(0, flow(state, "line"));
    assertFalse(isOpen(state, "line"));
    state = cracking(0.2);
    assertTrue(flow(state, "line") > 1e-4);
    assertTrue(isOpen(state, "line"));
  }

  private static SteadyState cracking(double crackingHeadM) {
    return new Sketch()
        .basin("upper", 0.3)
        .basin("lower", 0)
        .line("line", "upper", "lower", pipe(5, 0.05), check(crackingHeadM))
        .solve();
  }

  @Test
  void aLoopBetweenEqualLevelsRests() {
    state =
        new Sketch()
            .basin("one", 1)
            .basin("other", 1)
            .tee("T")
            .line("a", "one", "T", pipe(5, 0.05))
            .line("b", "T", "other", pipe(5, 0.05))
            .line("c", "other", "T", pipe(9, 0.03))
            .solve();
    for (String line : List.of("a", "b", "c")) {
      assertEquals(0, flow(state, line), 1e-12, line);
    }
    assertEquals(1, head(state, "T"), 1e-9);
  }

  @Test
  void aDeadEndCarriesExactlyNothing() {
    state =
        new Sketch()
            .basin("upper", 1)
            .basin("lower", 0)
            .tee("T")
            .tee("one")
            .tee("two")
            .line("a", "upper", "T", pipe(5, 0.05))
            .line("b", "T", "lower", pipe(5, 0.05))
            .line("c", "T", "one", pipe(5, 0.05))
            .line("d", "one", "two", pipe(5, 0.05))
            .solve();
    assertEquals(0, flow(state, "c"));
    assertEquals(0, flow(state, "d"));
    assertEquals(head(state, "T"), head(state, "two"));
  }
}
