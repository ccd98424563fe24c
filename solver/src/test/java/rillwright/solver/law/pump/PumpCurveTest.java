package rillwright.solver.law.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Seeded;

class PumpCurveTest {

  /** Reads "flow:head" or "flow:head:power", flows in L/s, heads in m, power in W. */
  static PumpCurve curve(String sheet) {
    return new PumpCurve(points(sheet));
  }

  private static List<PumpPoint> points(String sheet) {
    return Arrays.stream(sheet.split(" ")).map(PumpCurveTest::point).toList();
  }

  private static PumpPoint point(String row) {
    String[] cells = row.split(":");
    OptionalDouble power =
        cells.length > 2 ? OptionalDouble.of(Double.parseDouble(cells[2])) : OptionalDouble.empty();
    return new PumpPoint(Double.parseDouble(cells[0]) / 1000, Double.parseDouble(cells[1]), power);
  }

  @Test
  void goesThroughItsPointsAndOnPastTheLast() {
    PumpCurve curve = curve("0:9.4 1:9 2:7.8 3:5.6 4:2");
    assertEquals(9.4, curve.headAt(0), 1e-15);
    assertEquals(7.8, curve.headAt(0.002), 1e-14);
    assertEquals(2, curve.headAt(0.004), 1e-14);
    assertEquals(0.004, curve.lastFlowM3PerS());
    // ((2 · 1 + 1) · −3600 − 1 · −2200)/2 = −4300
    assertEquals(-4300, curve.headSlopeAt(0.004), 1e-9);
    assertEquals(2 - 4.3, curve.headAt(0.005), 1e-12);
    assertFalse(curve.isLevelled());
  }

  @Test
  void levellingLastPointGoesOnFallingByAThirdOfItsSecant() {
    PumpCurve curve = curve("0:9 1:6 2:5.7");
    assertEquals(-100, curve.headSlopeAt(0.002), 1e-9);
    assertEquals(5.7 - 0.2, curve.headAt(0.004), 1e-12);
  }

  /** Levelled from the last point to the first by 0.1 % of the shut-off head, 5 mm here. */
  @Test
  void humpIsLevelledFromTheLastPointToTheFirst() {
    PumpCurve curve = curve("0:5 1:5.5 2:6 3:5.8 4:2");
    assertTrue(curve.isLevelled());
    assertEquals(6.010, curve.headAt(0), 1e-14);
    assertEquals(6.005, curve.headAt(0.001), 1e-14);
    assertEquals(6, curve.headAt(0.002), 1e-14);
    assertEquals(5.8, curve.headAt(0.003), 1e-14);
    assertEquals(5, curve.publishedShutOffHeadM(), "published, not levelled");
    assertEquals(5, curve.points().get(0).headM(), "points stay as published");
  }

  @Test
  void twoEqualHeadsAreAHumpToo() {
    PumpCurve curve = curve("0:5 1:5 2:3");
    assertTrue(curve.isLevelled());
    assertEquals(5.005, curve.headAt(0), 1e-14);
  }

  @Seeded
  void levelledCurveFallsThroughout(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder sheet = new StringBuilder("0:6");
    for (int i = 1; i < 8; i++) {
      sheet.append(' ').append(i).append(':').append(3 + 6 * random.nextDouble());
    }
    PumpCurve curve = curve(sheet + " 8:1");
    double before = Double.POSITIVE_INFINITY;
    for (double flow = 0; flow < 0.012; flow += 5e-6) {
      String where = "at " + flow + " m³/s, seed " + seed + ", " + sheet;
      assertTrue(curve.headAt(flow) < before, where);
      before = curve.headAt(flow);
    }
  }

  /** First slope ((2 · 1 + 1) · −1000 − 1 · −2000)/2 = −500 per m³/s goes on to no flow. */
  @Test
  void sheetThatBeginsLaterGoesOnToNoFlow() {
    PumpCurve curve = curve("1:8 2:7 3:5");
    assertEquals(8.5, curve.headAt(0), 1e-12);
    assertEquals(8.5, curve.publishedShutOffHeadM(), 1e-12);
  }

  @Test
  void sheetThatBeginsLaterIsNoFlatterThanAThirdOfItsFirstSecant() {
    PumpCurve curve = curve("1:8 2:7.7 3:5");
    assertEquals(-100, curve.headSlopeAt(0), 1e-9);
    assertEquals(8.1, curve.headAt(0), 1e-12);
  }

  /** Published slope ((2 · 1 + 1) · 500 − 1 · −1500)/2 = 1500, within three secants. */
  @Test
  void publishedShutOffHeadOfAHumpThatBeginsLaterIsNotLevelled() {
    PumpCurve curve = curve("1:8 2:8.5 3:7");
    assertEquals(8 - 1.5, curve.publishedShutOffHeadM(), 1e-12);
    assertTrue(curve.headAt(0) > 8.5, "the levelled curve starts above its hump");
  }

  @Test
  void powerIsTheSameCubicAndGoesOnStraight() {
    PumpCurve curve = curve("0:9:300 1:8:340 2:6:400 3:3:410");
    assertEquals(340, curve.powerAt(0.001).orElseThrow(), 1e-12);
    // fitted end slope ((3) · 10 − 60)/2 < 0 is set to 0, then to a third of the secant
    double third = 10.0 / 3;
    assertEquals(410 + third, curve.powerAt(0.004).orElseThrow(), 1e-10);
  }

  @Test
  void powerIsNeverBelowZero() {
    PumpCurve curve = curve("0:9:300 1:8:100 2:6:20");
    assertEquals(0, curve.powerAt(0.01).orElseThrow());
    assertTrue(curve.powerAt(0.0019).orElseThrow() > 0);
  }

  @Test
  void powerMayBeMissingInSomeRowsOrAll() {
    PumpCurve some = curve("0:9:300 1:8 2:6:400");
    assertEquals(350, some.powerAt(0.001).orElseThrow(), 1e-12);
    assertEquals(OptionalDouble.empty(), curve("0:9 1:8 2:6").powerAt(0.001));
    assertEquals(OptionalDouble.empty(), curve("0:9:300 1:8 2:6").powerAt(0.001));
  }

  @ParameterizedTest
  @CsvSource({
    "0:9",
    "0:9 1:9",
    "0:9 1:8 2:9.5",
    "0:9 0:8",
    "1:9 0:8",
    "0:9 Infinity:8",
    "0:Infinity 1:8",
    "0:9 1:-1",
    "-1:9 1:8",
    "0:9:NaN 1:8:3"
  })
  void refusesWhatIsNoPumpCurve(String sheet) {
    assertThrows(IllegalArgumentException.class, () -> curve(sheet));
  }
}
