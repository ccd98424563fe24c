package rillwright.solver.law.minor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Draw;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.Trial;
import rillwright.solver.law.curve.MonotoneCubic.Knot;

class TabulatedLossTest implements SameBothWaysContract {

  @Override
  public Trial trial(SplittableRandom random) {
    List<Knot> points = risingPoints(random);
    List<Double> joints = points.stream().map(Knot::x).toList();
    return Trial.withJointsBothWays(
        TabulatedLoss.through(points), joints.get(joints.size() - 1), joints);
  }

  private static List<Knot> risingPoints(SplittableRandom random) {
    List<Knot> points = new ArrayList<>();
    double flow = 0;
    double head = 0;
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      flow += Draw.between(random, 3e-4, 3e-3);
      head += Draw.between(random, 0.01, 2);
      points.add(new Knot(flow, head));
    }
    return points;
  }

  @Seeded
  void goesThroughItsPoints(long seed) {
    List<Knot> points = risingPoints(new SplittableRandom(seed));
    TabulatedLoss loss = TabulatedLoss.through(points);
    for (Knot point : points) {
      assertEquals(point.y(), loss.headLossAt(point.x()), 1e-14, "seed " + seed);
      assertEquals(-point.y(), loss.headLossAt(-point.x()), 1e-14, "seed " + seed);
    }
  }

  @Test
  void onePointMakesAStraightLineThroughTheOrigin() {
    TabulatedLoss loss = TabulatedLoss.through(List.of(new Knot(0.002, 0.5)));
    assertEquals(0.25, loss.headLossAt(0.001), 1e-15);
    assertEquals(-1, loss.headLossAt(-0.004), 1e-15);
    assertEquals(250, loss.slopeAt(0), 1e-12);
    assertEquals(250, loss.slopeAt(-0.01), 1e-12);
  }

  @Test
  void originMayBeGiven() {
    TabulatedLoss without = TabulatedLoss.through(List.of(new Knot(1, 1), new Knot(2, 4)));
    TabulatedLoss with =
        TabulatedLoss.through(List.of(new Knot(0, 0), new Knot(1, 1), new Knot(2, 4)));
    assertEquals(without.headLossAt(1.5), with.headLossAt(1.5));
  }

  /** Levelling points: the end slope fitted would be 0, a third of the last secant goes on. */
  @Test
  void goesOnRisingPastALevellingEnd() {
    TabulatedLoss loss = TabulatedLoss.through(List.of(new Knot(1, 10), new Knot(2, 10.3)));
    assertEquals(0.1, loss.slopeAt(2), 1e-12);
    assertEquals(10.5, loss.headLossAt(4), 1e-12);
    assertTrue(loss.headLossAt(2) > loss.headLossAt(1.99));
  }

  @Test
  void refusesTablesThatDoNotRiseFromTheOrigin() {
    assertThrows(IllegalArgumentException.class, () -> TabulatedLoss.through(List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> TabulatedLoss.through(List.of(new Knot(0, 0.1), new Knot(1, 1))));
    assertThrows(
        IllegalArgumentException.class,
        () -> TabulatedLoss.through(List.of(new Knot(1, 1), new Knot(2, 1))));
    assertThrows(
        IllegalArgumentException.class,
        () -> TabulatedLoss.through(List.of(new Knot(1, -1), new Knot(2, 1))));
  }
}
