package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.check;
import static rillwright.solver.steady.Sketch.flow;
import static rillwright.solver.steady.Sketch.head;
import static rillwright.solver.steady.Sketch.outflow;
import static rillwright.solver.steady.Sketch.pipe;
import static rillwright.solver.steady.Sketch.pump;
import static rillwright.solver.steady.Sketch.skimmer;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Skimmer;

/** Chambers that a pump draws down to its intake. */
class StarvedChamberTest {
  /** What a mouth 0.3 m wide passes freely with 0.1 m over its sill, by ⅔ Cd b √(2g) h^1.5. */
  private static final double MOST =
      2.0 / 3 * 0.36 * 0.3 * Math.sqrt(2 * 9.80665) * Math.pow(0.1, 1.5);

  private SteadyState state;

  @AfterEach
  void balances() {
    assertEquals(List.of(), BalanceAudit.faults(state));
  }

  /** A sill 0.1 m under the pond's level, 0.3 m wide. */
  private static Sketch pond() {
    return new Sketch()
        .basin("pond", 0)
        .chamber("chamber", -0.6)
        .line("intake", "pond", "chamber", skimmer(0.3, -0.1));
  }

  private static Pump strong() {
    return pump(0, 12, 0.01, 9, 0.02, 0);
  }

  private PointState chamber() {
    return state.point(new PointName("chamber"));
  }

  @Test
  void aPumpThatWantsMoreThanTheMouthPassesGetsWhatItPasses() {
    state =
        pond().fall("fall", 2).line("supply", "chamber", "fall", strong(), pipe(20, 0.08)).solve();
    assertTrue(chamber().isStarved());
    assertEquals(-0.6, chamber().headM().getAsDouble());
    assertEquals(MOST, outflow(state, "fall"), 1e-9 * MOST);
    double drawn = chamber().drawnHeadM().getAsDouble();
    assertEquals(-0.6 - chamber().missingHeadM().getAsDouble(), drawn, 1e-12);
    assertTrue(drawn < -0.6);
    assertEquals(0, chamber().outflowM3PerS());
  }

  @Test
  void aPumpThatWantsLessStarvesNothing() {
    state =
        pond()
            .fall("fall", 2)
            .line("supply", "chamber", "fall", pump(0, 4, 0.004, 0), pipe(20, 0.08))
            .solve();
    assertFalse(chamber().isStarved());
    assertTrue(head(state, "chamber") > -0.6 && head(state, "chamber") < 0);
    assertTrue(flow(state, "supply") > 1e-3 && flow(state, "supply") < MOST);
  }

  @Test
  void aHigherIntakeStarvesWhereTheMouthIsDrowned() {
    state =
        new Sketch()
            .basin("pond", 0)
            .chamber("chamber", -0.05)
            .fall("fall", 2)
            .line("intake", "pond", "chamber", skimmer(0.3, -0.1))
            .line("supply", "chamber", "fall", strong(), pipe(20, 0.08))
            .solve();
    // Villemonte's reduction with half the depth downstream of the sill.
    double passes = MOST * Math.pow(1 - Math.pow(0.5, 1.5), 0.385);
    assertTrue(chamber().isStarved());
    assertEquals(passes, outflow(state, "fall"), 1e-9 * passes);
  }

  @Test
  void twoPumpsShareOneLevelAndAllThatComesIn() {
    state =
        pond()
            .fall("low", 1)
            .fall("high", 1.5)
            .line("one", "chamber", "low", strong(), pipe(20, 0.08))
            .line("two", "chamber", "high", strong(), pipe(20, 0.08))
            .solve();
    assertTrue(chamber().isStarved());
    assertEquals(MOST, flow(state, "one") + flow(state, "two"), 1e-9 * MOST);
    assertTrue(flow(state, "one") > flow(state, "two") && flow(state, "two") > 0);
  }

  @Test
  void aWeakPumpBesideAStrongOneStopsWhenTheChamberIsStarved() {
    state =
        pond()
            .fall("low", 1)
            .fall("high", 5)
            .line("strong", "chamber", "low", strong(), pipe(20, 0.08))
            .line("weak", "chamber", "high", pump(0, 5.7, 0.005, 0), pipe(20, 0.08))
            .solve();
    assertTrue(chamber().isStarved());
    assertEquals(MOST, flow(state, "strong"), 1e-9 * MOST);
    assertEquals(0, flow(state, "weak"));
    assertFalse(Sketch.isOpen(state, "weak"));
  }

  @ParameterizedTest(name = "return of {0} m bore")
  @ValueSource(doubles = {0.01, 0.03, 0.05, 0.08, 0.15})
  void whatRunsBackIntoTheChamberIsDrawnAgain(double bore) {
    state =
        pond()
            .tee("T")
            .fall("fall", 2)
            .line("supply", "chamber", "T", pump(0, 12, 0.04, 9, 0.09, 0), pipe(2, 0.1))
            .line("over", "T", "fall", pipe(2, 0.08))
            .line("return", "T", "chamber", pipe(4, bore))
            .solve();
    assertEquals(flow(state, "intake") + flow(state, "return"), flow(state, "supply"), 1e-12);
    assertTrue(flow(state, "return") > 0);
    if (chamber().isStarved()) {
      assertEquals(MOST, outflow(state, "fall"), 1e-9 * MOST);
    }
  }

  @Test
  void nothingRunsInFromWhatStandsLowerThanTheIntake() {
    state =
        pond()
            .basin("ditch", -0.9)
            .tee("T")
            .fall("fall", 2)
            .line("supply", "chamber", "fall", pump(0, 12, 0.04, 9, 0.09, 0), pipe(9, 0.1))
            .line("to ditch", "chamber", "T", pipe(2, 0.05), check(0))
            .line("on", "T", "ditch", pipe(2, 0.05))
            .solve();
    assertTrue(chamber().isStarved());
    assertTrue(chamber().drawnHeadM().getAsDouble() < -0.9);
    assertEquals(0, flow(state, "to ditch"));
    state =
        pond()
            .basin("ditch", -0.9)
            .fall("fall", 2)
            .line("supply", "chamber", "fall", pump(0, 12, 0.04, 9, 0.09, 0), pipe(9, 0.1))
            .line("to ditch", "chamber", "ditch", pipe(2, 0.05))
            .solve();
    assertEquals(0, flow(state, "to ditch"));
    assertTrue(Sketch.isOpen(state, "to ditch"));
  }

  @Test
  void nothingComesInThroughAMouthThatIsAllClogged() {
    Skimmer clogged = new Skimmer(0.3, OptionalDouble.empty(), -0.1, Skimmer.WITH_DOOR, 1);
    state =
        new Sketch()
            .basin("pond", 0)
            .basin("ditch", -0.9)
            .chamber("chamber", -0.6)
            .fall("fall", 2)
            .line("intake", "pond", "chamber", clogged)
            .line("drain", "chamber", "ditch", pipe(2, 0.05))
            .line("supply", "chamber", "fall", strong(), pipe(20, 0.08))
            .solve();
    assertTrue(chamber().isStarved());
    assertEquals(0, outflow(state, "fall"));
    assertEquals(0, flow(state, "drain"));
    // The ditch takes the last of it: drawing stops at the ditch's level or lower.
    assertTrue(chamber().drawnHeadM().getAsDouble() <= -0.9);
  }

  @Test
  void theSecondOfTwoChambersStarvesForWhatTheFirstLetsThrough() {
    state =
        pond()
            .chamber("second", -0.3)
            .fall("fall", 2)
            .line("between", "chamber", "second", pipe(3, 0.04))
            .line("supply", "second", "fall", strong(), pipe(20, 0.08))
            .solve();
    PointState second = state.point(new PointName("second"));
    assertTrue(second.isStarved());
    assertFalse(chamber().isStarved());
    assertEquals(flow(state, "intake"), outflow(state, "fall"), 1e-12);
    assertTrue(flow(state, "between") < MOST);
  }
}
