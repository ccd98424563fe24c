package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.flow;
import static rillwright.solver.steady.Sketch.pump;
import static rillwright.solver.steady.Sketch.quadratic;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.law.Bore;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.HighPoint.Air;
import rillwright.solver.network.LineName;

/** What is found of water that is under suction where its pipe is highest, by closed forms. */
class SuctionAtHighPointsTest {
  private static final double G = 9.80665;

  private static HighPoint high(double elevationM, double boreM, Air air) {
    return new HighPoint(elevationM, Optional.of(new Bore(boreM)), air, 90);
  }

  private static List<String> codes(SteadyState state) {
    return Findings.of(state).stream()
        .filter(it -> it.at().equals("over"))
        .map(Finding::code)
        .toList();
  }

  /**
   * A primed siphon between waters 2 m apart with 1 m of loss before its top and 1 m after it: √(1
   * / 1e4) = 10 L/s, 1.273 m/s in 100 mm, so that the suction there is its height less 1 m and
   * 0.083 m more. Air less vapour at 20 °C is (101,325 − 2,339) / (998.2 · 9.80665) = 10.11 m
   * (steam tables, from memory); 0.7 of it, 7.08 m, is common practice, no source.
   */
  @ParameterizedTest(name = "{0} m")
  @CsvSource({
    "7.97, ''",
    "8.02, air-out-of-solution",
    "11.00, air-out-of-solution",
    "11.06, column-parts"
  })
  void airComesOutOfTheWaterAndThenItBoils(double topM, String code) {
    SteadyState state =
        new Sketch()
            .basin("upper", 2)
            .basin("lower", 0)
            .line(
                "over",
                "upper",
                "lower",
                quadratic(1e4),
                high(topM, 0.1, Air.PRIMED),
                quadratic(1e4))
            .solve();
    assertEquals(0.01, flow(state, "over"), 1e-12);
    List<String> codes = codes(state);
    assertTrue(codes.contains("primed-by-hand"), codes.toString());
    List<String> suction =
        codes.stream().filter(it -> it.startsWith("air-") || it.startsWith("column-")).toList();
    assertEquals(code, String.join(" ", suction));
  }

  private static SteadyState over(HighPoint... points) {
    Sketch sketch = new Sketch().basin("pond", 0).basin("low", 0);
    return points.length == 1
        ? sketch.line("over", "pond", "low", pump(0, 5, 0.01, 0), quadratic(3e4), points[0]).solve()
        : sketch
            .line(
                "over",
                "pond",
                "low",
                pump(0, 5, 0.01, 0),
                quadratic(3e4),
                points[0],
                quadratic(3e4),
                points[1],
                quadratic(3e4))
            .solve();
  }

  @Test
  void eachCourseIsSaid() {
    assertTrue(codes(over(high(3, 0.05, Air.SWEPT))).contains("high-point-under-suction"));
    assertTrue(codes(over(high(3, 0.2, Air.SWEPT))).contains("high-point-vented"));
    assertTrue(codes(over(high(3, 0.2, Air.VENTED))).contains("high-point-vented"));
  }

  /**
   * Full, 5 − 500 Q = 9e4 Q²: both tops, 2.5 m and 3 m, are under suction. With air at the higher
   * one alone, 5 − 500 Q = 3 + 6e4 Q² + (Q/A)²/2g, the lower one is not: the line ends at the
   * higher one, by the formula for a quadratic.
   */
  @Test
  void airStaysAtTheTopWithTheLeastPressure() {
    double full = (-500 + Math.sqrt(500 * 500 + 4 * 9e4 * 5)) / (2 * 9e4);
    assertTrue(5 - 500 * full - 3e4 * full * full < 2.5, "the lower top is under suction too");
    double area = Math.PI / 4 * 0.1 * 0.1;
    double a = 6e4 + 1 / (2 * G * area * area);
    double vented = (-500 + Math.sqrt(500 * 500 + 4 * a * 2)) / (2 * a);

    SteadyState state = over(high(2.5, 0.1, Air.SWEPT), high(3, 0.1, Air.SWEPT));

    Course.Vented course =
        assertInstanceOf(Course.Vented.class, state.line(new LineName("over")).course());
    assertEquals(4, course.highPoint(), 1e-9, "the fifth part, the second of the tops");
    assertEquals(vented, flow(state, "over"), 1e-12);
  }
}
