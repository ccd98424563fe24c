package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.check;
import static rillwright.solver.steady.Sketch.flow;
import static rillwright.solver.steady.Sketch.isOpen;
import static rillwright.solver.steady.Sketch.outflow;
import static rillwright.solver.steady.Sketch.pump;
import static rillwright.solver.steady.Sketch.quadratic;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.HighPoint.Air;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;

/** Lines over high points, against closed forms. */
class ClimbingTest {
  private static final double G = 9.80665;

  /** Gives 5 m at no flow and nothing at 0.01 m³/s, in a straight line. */
  private static final Pump PUMP = pump(0, 5, 0.01, 0);

  private static HighPoint high(double elevationM) {
    return new HighPoint(elevationM, Optional.of(new Bore(0.1)));
  }

  private static HighPoint high(double elevationM, double boreM, Air air, double fallDegrees) {
    return new HighPoint(elevationM, Optional.of(new Bore(boreM)), air, fallDegrees);
  }

  private static Course course(SteadyState state, String line) {
    return state.line(new LineName(line)).course();
  }

  /** It starts only if the shut-off head is above the high point, by however little. */
  @ParameterizedTest
  @CsvSource({"5.000001, false", "5, false", "4.999999, true"})
  void thePublishedShutOffHeadMustReach(double elevationM, boolean starts) {
    SteadyState state =
        new Sketch()
            .basin("pond", 0)
            .outlet("end", 1)
            .line("up", "pond", "end", PUMP, quadratic(1e4), high(elevationM))
            .solve();
    assertEquals(starts, flow(state, "up") > 0);
    assertEquals(starts, isOpen(state, "up"));
    if (!starts) {
      Course.NotStarted barred = assertInstanceOf(Course.NotStarted.class, course(state, "up"));
      assertEquals(5, barred.reachM().getAsDouble(), 1e-12);
    }
  }

  /** Heads of pumps in series add, speed counts squared, a cracking head is lost. */
  @ParameterizedTest
  @CsvSource({"9.99, true", "10.01, false"})
  void allPumpsBeforeCount(double elevationM, boolean starts) {
    Pump two = pump(2, Arrangement.SERIES, 0, 5, 0.01, 0);
    assertEquals(starts, runs(elevationM, two));
    assertEquals(starts, runs(elevationM, pump(0, 40, 0.01, 0).atSpeed(0.5)));
    assertEquals(starts, runs(elevationM, two, check(0)));
    assertFalse(runs(elevationM, two, check(0.5)));
    assertEquals(starts, runs(elevationM, PUMP, quadratic(1), PUMP));
  }

  private static boolean runs(double elevationM, Part... before) {
    Part[] parts = Arrays.copyOf(before, before.length + 1);
    parts[before.length] = high(elevationM);
    SteadyState state =
        new Sketch().basin("pond", 0).outlet("end", 1).line("up", "pond", "end", parts).solve();
    return flow(state, "up") > 0;
  }

  /** A siphon between two waters 2 m apart: Q = √(2 / (k1 + k2)) once primed, nothing before. */
  @ParameterizedTest
  @CsvSource({"SWEPT, 0", "VENTED, 0", "PRIMED, 0.01"})
  void aSiphonRunsOnlyPrimed(Air air, double expected) {
    SteadyState state =
        new Sketch()
            .basin("upper", 2)
            .basin("lower", 0)
            .line(
                "siphon", "upper", "lower", quadratic(1e4), high(2.5, 0.1, air, 90), quadratic(1e4))
            .solve();
    assertEquals(expected, flow(state, "siphon"), 1e-12);
  }

  /** The same drawn from the lower water to the upper. */
  @Test
  void aSiphonDrawnTheOtherWayNeedsPrimingToo() {
    Sketch sketch = new Sketch().basin("upper", 2).basin("lower", 0);
    SteadyState state = sketch.line("siphon", "lower", "upper", quadratic(1e4), high(2.5)).solve();
    Course.NotStarted barred = assertInstanceOf(Course.NotStarted.class, course(state, "siphon"));
    assertEquals(2, barred.reachM().getAsDouble(), 1e-12);
  }

  /**
   * Behind a high point at 3 m the pipe goes down to 0. Full: 5 − 500 Q = k Q². With air: 5 − 500 Q
   * = 3 + k Q²/2 + (Q/A)²/2g, the lesser; by the formula for a quadratic.
   */
  @ParameterizedTest
  @CsvSource({"SWEPT, 0.2, 90", "VENTED, 0.01, 90"})
  void airLeavesTheVentedFlow(Air air, double boreM, double fallDegrees) {
    double k = 1e5;
    SteadyState state =
        new Sketch()
            .basin("pond", 0)
            .basin("low", 0)
            .line(
                "over",
                "pond",
                "low",
                PUMP,
                quadratic(k / 2),
                high(3, boreM, air, fallDegrees),
                quadratic(k / 2))
            .solve();
    double area = Math.PI / 4 * boreM * boreM;
    double a = k / 2 + 1 / (2 * G * area * area);
    double vented = (-500 + Math.sqrt(500 * 500 + 4 * a * 2)) / (2 * a);
    double full = (-500 + Math.sqrt(500 * 500 + 4 * k * 5)) / (2 * k);
    assertEquals(vented, flow(state, "over"), 1e-12);
    Course.Vented course = assertInstanceOf(Course.Vented.class, course(state, "over"));
    assertEquals(full, course.fullFlowM3PerS(), 1e-12);
  }

  /**
   * In the bore at which the vented flow has just the Froude number that sweeps air, found by hand:
   * in a narrower one the line runs full, in a wider one it does not.
   */
  @ParameterizedTest
  @CsvSource({"90, 1.17", "30, 1.006"})
  void fastWaterSweepsTheAir(double fallDegrees, double froude) {
    double narrow = narrowest(fallDegrees);
    double low = ventedFroude(narrow * 1.001);
    double high = ventedFroude(narrow * 0.999);
    assertTrue(low < froude && froude < high, low + " " + high);
  }

  /** The widest bore that still runs full, by halving. */
  private static double narrowest(double fallDegrees) {
    double full = 0.02;
    double vented = 0.2;
    while (vented - full > 1e-6) {
      double middle = (full + vented) / 2;
      Course course = course(over(middle, Air.SWEPT, fallDegrees), "over");
      if (course instanceof Course.Swept) {
        full = middle;
      } else {
        vented = middle;
      }
    }
    return full;
  }

  private static double ventedFroude(double boreM) {
    double flow = flow(over(boreM, Air.VENTED, 90), "over");
    return flow / (Math.PI / 4 * boreM * boreM) / Math.sqrt(G * boreM);
  }

  private static SteadyState over(double boreM, Air air, double fallDegrees) {
    return new Sketch()
        .basin("pond", 0)
        .basin("low", 0)
        .line("over", "pond", "low", PUMP, quadratic(1e4), high(3, boreM, air, fallDegrees))
        .solve();
  }

  /** What falls out of a vented line comes to the point below and goes on from there. */
  @Test
  void ventedWaterArrives() {
    SteadyState state =
        new Sketch()
            .basin("pond", 0)
            .tee("split")
            .fall("fall", 1)
            .outlet("end", 0.5)
            .line("over", "pond", "split", PUMP, quadratic(1e4), high(3, 0.1, Air.VENTED, 90))
            .line("to fall", "split", "fall", quadratic(1e4))
            .line("to end", "split", "end", quadratic(1e6))
            .solve();
    double arrived = flow(state, "to fall") + flow(state, "to end");
    assertEquals(flow(state, "over"), arrived, 1e-12);
    assertEquals(flow(state, "over"), outflow(state, "fall") + outflow(state, "end"), 1e-12);
    assertTrue(arrived > 1e-3);
  }

  /** The lower line lets the head at the tee fall below the upper one's high point. */
  @Test
  void theLowestHighPointComesFirst() {
    SteadyState state =
        new Sketch()
            .basin("pond", 0)
            .tee("split")
            .outlet("upper", 4)
            .outlet("lower", 1)
            .line("supply", "pond", "split", PUMP)
            .line("to upper", "split", "upper", quadratic(1e4), high(4.5))
            .line("to lower", "split", "lower", quadratic(1e3), high(2))
            .solve();
    assertEquals(0, flow(state, "to upper"));
    assertTrue(flow(state, "to lower") > 0.005);
    Course.NotStarted barred = assertInstanceOf(Course.NotStarted.class, course(state, "to upper"));
    assertEquals(Sketch.head(state, "split"), barred.reachM().getAsDouble(), 1e-9);
  }

  /** Behind a tee where nothing flows yet the shut-off head stands. */
  @ParameterizedTest
  @CsvSource({"4.99, true", "5.01, false"})
  void theShutOffHeadIsCarriedThroughTees(double elevationM, boolean starts) {
    SteadyState state =
        new Sketch()
            .basin("pond", 0)
            .tee("one")
            .tee("two")
            .outlet("end", 1)
            .line("supply", "pond", "one", PUMP)
            .line("between", "one", "two", quadratic(10))
            .line("up", "two", "end", quadratic(1e4), high(elevationM))
            .solve();
    assertEquals(starts, flow(state, "up") > 0);
  }

  /** Before its pump a high point is a matter of suction. */
  @Test
  void aHighPointBeforeThePumpDoesNotBar() {
    SteadyState state =
        new Sketch()
            .basin("pond", 0)
            .outlet("end", 1)
            .line("up", "pond", "end", high(2), PUMP, quadratic(1e4))
            .solve();
    assertTrue(flow(state, "up") > 0);
    assertInstanceOf(Course.Full.class, course(state, "up"));
  }
}
