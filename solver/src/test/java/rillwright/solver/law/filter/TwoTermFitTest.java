package rillwright.solver.law.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Draw;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.filter.TwoTermFit.Point;

class TwoTermFitTest {

  @Seeded
  void twoPointsAreMetExactly(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 100; i++) {
      double flow = Draw.between(random, 1e-4, 0.01);
      double head = Draw.between(random, 0.01, 3);
      double larger = flow * Draw.between(random, 1.05, 4);
      double exponent = 1 + random.nextDouble();
      double largerHead = head * Math.pow(larger / flow, exponent);
      TwoTermLoss loss =
          TwoTermFit.through(List.of(new Point(larger, largerHead), new Point(flow, head)));
      assertEquals(head, loss.headLossAt(flow), 1e-12 * head, "seed " + seed);
      assertEquals(largerHead, loss.headLossAt(larger), 1e-12 * largerHead, "seed " + seed);
    }
  }

  @Test
  void straightAndSquareLossesAreTheLimits() {
    TwoTermLoss straight =
        TwoTermFit.through(List.of(new Point(0.001, 0.3), new Point(0.003, 0.9)));
    assertEquals(300, straight.linear(), 1e-9);
    assertEquals(0, straight.quadratic() * 0.003, 1e-9);
    TwoTermLoss square = TwoTermFit.through(List.of(new Point(0.001, 0.3), new Point(0.003, 2.7)));
    assertEquals(0, square.linear(), 1e-9);
    assertEquals(300_000, square.quadratic(), 1e-6);
  }

  @Test
  void twoPointsThatAskForANegativeTermAreRefusedInWords() {
    assertMessage(
        "its loss rises faster than the square of the flow",
        List.of(new Point(0.001, 0.3), new Point(0.002, 1.3)));
    assertMessage(
        "its loss rises more slowly than the flow",
        List.of(new Point(0.001, 0.3), new Point(0.002, 0.5)));
  }

  private static void assertMessage(String message, List<Point> points) {
    assertEquals(
        message,
        assertThrows(IllegalArgumentException.class, () -> TwoTermFit.through(points))
            .getMessage());
  }

  @Test
  void oneFlowIsNotEnough() {
    Point point = new Point(0.001, 0.3);
    assertThrows(IllegalArgumentException.class, () -> TwoTermFit.through(List.of(point)));
    assertThrows(IllegalArgumentException.class, () -> TwoTermFit.through(List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> TwoTermFit.through(List.of(point, point, new Point(0.001, 0.4))));
  }

  /** Noise of every size: some fits lie inside, some on either edge of what is allowed. */
  @Seeded
  void fitThroughManyPointsIsOptimal(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 100; i++) {
      List<Point> points = scattered(random);
      TwoTermLoss loss = TwoTermFit.through(points);
      double flow = points.stream().mapToDouble(Point::flowM3PerS).max().orElseThrow();
      double a = loss.linear() * flow;
      double b = loss.quadratic() * flow * flow;
      double steepnessA = 0;
      double steepnessB = 0;
      double size = 0;
      for (Point point : points) {
        double share = point.flowM3PerS() / flow;
        double relativeError = (a * share + b * share * share) / point.headM() - 1;
        steepnessA += relativeError * share / point.headM();
        steepnessB += relativeError * share * share / point.headM();
        size += share / point.headM();
      }
      String where = "seed " + seed + ", " + points + ", " + loss;
      assertOptimal(a, steepnessA, 1e-9 * size, where);
      assertOptimal(b, steepnessB, 1e-9 * size, where);
    }
  }

  /** Karush, Kuhn and Tucker: flat where the term is positive, rising where it is 0. */
  private static void assertOptimal(double term, double steepness, double within, String where) {
    assertTrue(term >= 0, where);
    if (term > 0) {
      assertEquals(0, steepness, within, where);
    } else {
      assertTrue(steepness >= -within, where);
    }
  }

  private static List<Point> scattered(SplittableRandom random) {
    double flow = Draw.between(random, 1e-4, 0.01);
    double exponent = 0.7 + 1.6 * random.nextDouble();
    List<Point> points = new ArrayList<>();
    int count = 3 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      double share = (i + 1.0) / count;
      double noise = Draw.between(random, 0.8, 1.25);
      points.add(new Point(flow * share, 0.5 * Math.pow(share, exponent) * noise));
    }
    return points;
  }

  /**
   * Ergun's equation through a packed bed (from memory): 1338.8671875 Pa for 0.8 mm grains, voids
   * 0.4, 1 mm/s, 1000 kg/m³, 1 mPa·s and 1 m (computed): a bed measured at 2 and 5 mm/s is met at 1
   * mm/s.
   */
  @Test
  void predictsAPackedBedBetweenItsPoints() {
    TwoTermLoss loss =
        TwoTermFit.through(
            List.of(new Point(0.002, ergunPa(0.002)), new Point(0.005, ergunPa(0.005))));
    assertEquals(1338.8671875, loss.headLossAt(0.001), 1e-9);
  }

  private static double ergunPa(double velocityMPerS) {
    double creeping = 150 * 1e-3 * 0.6 * 0.6 / (0.4 * 0.4 * 0.4 * 0.8e-3 * 0.8e-3);
    double turbulent = 1.75 * 1000 * 0.6 / (0.4 * 0.4 * 0.4 * 0.8e-3);
    return velocityMPerS * (creeping + turbulent * velocityMPerS);
  }
}
