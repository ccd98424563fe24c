package rillwright.solver.law.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Draw;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.curve.MonotoneCubic.EndSlopes;
import rillwright.solver.law.curve.MonotoneCubic.Knot;

class MonotoneCubicTest {

  @ParameterizedTest(name = "{0} at {2}")
  @CsvFileSource(resources = "/computed/shape-preserving-cubic.csv", useHeadersInDisplayName = true)
  void agreesWithAnIndependentProgram(
      String name, String knots, double x, double value, double slope) {
    MonotoneCubic curve = MonotoneCubic.through(knotsOf(knots), EndSlopes.AS_FITTED);
    assertEquals(value, curve.valueAt(x), 1e-12, name);
    assertEquals(slope, curve.slopeAt(x), 1e-12, name);
  }

  /** Reads "0:5 1:6". */
  private static List<Knot> knotsOf(String text) {
    return Arrays.stream(text.split(" "))
        .map(knot -> knot.split(":"))
        .map(pair -> new Knot(Double.parseDouble(pair[0]), Double.parseDouble(pair[1])))
        .toList();
  }

  /** Worked by hand: h1 = 1, h2 = 2, s1 = −1, s2 = −4 give −9/(5/1 + 4/4) = −1.5 inside. */
  @Test
  void interiorSlopeIsTheWeightedHarmonicMean() {
    MonotoneCubic curve = MonotoneCubic.through(knotsOf("0:10 1:9 3:1"), EndSlopes.AS_FITTED);
    assertEquals(-1.5, curve.slopeAt(1), 1e-15);
    assertEquals(0, curve.slopeAt(0), 1e-15); // (4 · −1 − 1 · −4)/3
    assertEquals(-6, curve.slopeAt(3), 1e-15); // (5 · −4 − 2 · −1)/3
  }

  /** (3 · 1 − 1 · −4)/2 = 3.5, more than three times the first secant, which turns after it. */
  @Test
  void endSlopeBesideATurnIsNoMoreThanThreeSecants() {
    MonotoneCubic curve = MonotoneCubic.through(knotsOf("0:0 1:1 2:-3"), EndSlopes.AS_FITTED);
    assertEquals(3, curve.slopeAt(0), 1e-15);
    assertEquals(0, curve.slopeAt(1));
  }

  @Test
  void twoPointsMakeAStraightLine() {
    MonotoneCubic line = MonotoneCubic.through(knotsOf("1:4 3:0"), EndSlopes.STEEP_AT_BOTH);
    assertEquals(6, line.valueAt(0), 1e-15);
    assertEquals(3, line.valueAt(1.5), 1e-15);
    assertEquals(-2, line.valueAt(4), 1e-15);
    assertEquals(-2, line.slopeAt(9), 1e-15);
  }

  /**
   * A curve that levels at both ends: fitted, both end slopes are 0; where it must go on, a third
   * of the neighbouring secant.
   */
  @ParameterizedTest
  @CsvSource({"AS_FITTED, 0, 0", "STEEP_AT_LAST, 0, -0.1", "STEEP_AT_BOTH, -0.1, -0.1"})
  void endIsNoFlatterThanAThirdOfItsSecantWhereAskedFor(EndSlopes ends, double first, double last) {
    MonotoneCubic curve = MonotoneCubic.through(knotsOf("1:5 2:4.7 3:1 4:0.7"), ends);
    assertEquals(first, curve.slopeAt(1), 1e-14);
    assertEquals(last, curve.slopeAt(4), 1e-14);
    assertEquals(5 - first, curve.valueAt(0), 1e-14);
    assertEquals(0.7 + 2 * last, curve.valueAt(6), 1e-14);
  }

  @Test
  void steeperEndsStayAsFitted() {
    MonotoneCubic curve = MonotoneCubic.through(knotsOf("1:5 2:4 3:2"), EndSlopes.STEEP_AT_BOTH);
    assertEquals(-0.5, curve.slopeAt(1), 1e-15);
    assertEquals(-2.5, curve.slopeAt(3), 1e-15);
  }

  @Seeded
  void fallingPointsMakeAFallingCurveWithEveryKindOfEnd(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (EndSlopes ends : EndSlopes.values()) {
      List<Knot> knots = fallingKnots(random);
      MonotoneCubic curve = MonotoneCubic.through(knots, ends);
      double span = curve.lastX() - curve.firstX();
      double before = Double.POSITIVE_INFINITY;
      for (int i = 0; i <= 2000; i++) {
        double x = curve.firstX() + span * i / 2000;
        double value = curve.valueAt(x);
        String where = ends + " at " + x + ", seed " + seed + ", " + knots;
        assertTrue(value < before, where);
        assertTrue(curve.slopeAt(x) <= 1e-12, where);
        before = value;
      }
    }
  }

  private static List<Knot> fallingKnots(SplittableRandom random) {
    List<Knot> knots = new ArrayList<>();
    double x = random.nextBoolean() ? 0 : random.nextDouble();
    double y = 10;
    int count = 2 + random.nextInt(8);
    for (int i = 0; i < count; i++) {
      knots.add(new Knot(x, y));
      x += Draw.between(random, 0.05, 2);
      y -= Draw.between(random, 0.01, 3);
    }
    return knots;
  }

  @Seeded
  void slopeIsTheDerivativeBetweenThePoints(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Knot> knots = fallingKnots(random);
    MonotoneCubic curve = MonotoneCubic.through(knots, EndSlopes.STEEP_AT_BOTH);
    for (int i = 1; i < knots.size(); i++) {
      double from = knots.get(i - 1).x();
      double width = knots.get(i).x() - from;
      for (double share = 0.05; share < 1; share += 0.1) {
        double x = from + share * width;
        double step = 1e-4 * width;
        double expected = (curve.valueAt(x + step) - curve.valueAt(x - step)) / (2 * step);
        assertEquals(expected, curve.slopeAt(x), 1e-6 * (1 + 1 / width), "seed " + seed);
      }
    }
  }

  @Test
  void saysWhetherItsPointsRise() {
    assertTrue(MonotoneCubic.through(knotsOf("0:0 1:1 2:3"), EndSlopes.AS_FITTED).increases());
    assertEquals(
        false, MonotoneCubic.through(knotsOf("0:0 1:1 2:1"), EndSlopes.AS_FITTED).increases());
  }

  @ParameterizedTest
  @CsvSource({"0:1", "0:1 0:2", "1:1 0:2", "0:1 NaN:2", "0:1 1:NaN", "0:1 1:Infinity"})
  void refusesWhatIsNoCurve(String knots) {
    assertThrows(
        IllegalArgumentException.class,
        () -> MonotoneCubic.through(knotsOf(knots), EndSlopes.AS_FITTED));
  }
}
