package rillwright.solver.law.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Draw;
import rillwright.solver.law.HeadLawContract;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.Trial;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpSet.Arrangement;

class PumpSetTest implements HeadLawContract {
  private static final Bore OUTLET = new Bore(0.05);
  private static final PumpCurve CURVE =
      PumpCurveTest.curve("0:9.4:300 1:9:340 2:7.8:380 3:5.6:410 4:2:420");

  @Override
  public Trial trial(SplittableRandom random) {
    return trial(random, Draw.between(random, 0.3, 1.5), Optional.empty());
  }

  private static Trial trial(
      SplittableRandom random, double speed, Optional<VelocityHeadLoss> runsBack) {
    PumpCurve curve = randomCurve(random);
    int count = 1 + random.nextInt(3);
    Arrangement arrangement = random.nextBoolean() ? Arrangement.PARALLEL : Arrangement.SERIES;
    PumpSet set = new PumpSet(curve, speed, count, arrangement, runsBack);
    double share = (arrangement == Arrangement.PARALLEL ? count : 1) * speed;
    List<Double> joints =
        curve.points().stream()
            .map(point -> point.flowM3PerS() * share)
            .filter(flow -> flow > 0)
            .toList();
    double usual = speed > 0 ? set.publishedRangeM3PerS() : curve.lastFlowM3PerS();
    return new Trial(set, usual, speed > 0 ? joints : List.of());
  }

  private static PumpCurve randomCurve(SplittableRandom random) {
    List<PumpPoint> points = new ArrayList<>();
    double flow = random.nextInt(4) == 0 ? Draw.between(random, 2e-4, 2e-3) : 0;
    double head = Draw.between(random, 3, 30);
    double steepest = head / 5;
    int count = 2 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      points.add(new PumpPoint(flow, Math.max(head, 0.1 / (i + 1)), OptionalDouble.empty()));
      flow += Draw.between(random, 5e-4, 2e-3);
      boolean hump = i + 2 < count && random.nextInt(6) == 0;
      head += hump ? 0.05 * steepest : -steepest * Draw.between(random, 0.2, 1);
    }
    return new PumpCurve(points);
  }

  /** Turning, and letting water back. */
  @Nested
  class RunningBack implements HeadLawContract {
    @Override
    public Trial trial(SplittableRandom random) {
      VelocityHeadLoss loss = new VelocityHeadLoss(Draw.between(random, 1, 30), OUTLET);
      return PumpSetTest.trial(random, Draw.between(random, 0.3, 1.5), Optional.of(loss));
    }
  }

  /** Stopped, and letting water through both ways. */
  @Nested
  class Stopped implements SameBothWaysContract {
    @Override
    public Trial trial(SplittableRandom random) {
      VelocityHeadLoss loss = new VelocityHeadLoss(Draw.between(random, 1, 30), OUTLET);
      return PumpSetTest.trial(random, 0, Optional.of(loss));
    }
  }

  private static PumpSet set(double speed, int count, Arrangement arrangement) {
    return new PumpSet(CURVE, speed, count, arrangement, Optional.empty());
  }

  @Seeded
  void speedFollowsTheAffinityLaws(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double speed = Draw.between(random, 0.2, 1.5);
    double flow = 0.006 * random.nextDouble();
    PumpSet set = set(speed, 1, Arrangement.PARALLEL);
    String where = "flow " + flow + ", speed " + speed + ", seed " + seed;
    assertEquals(speed * speed * CURVE.headAt(flow / speed), set.headAt(flow), 1e-12, where);
    assertEquals(-set.headAt(flow), set.headLossAt(flow), where);
    assertEquals(
        Math.pow(speed, 3) * CURVE.powerAt(flow / speed).orElseThrow(),
        set.powerAt(flow).orElseThrow(),
        1e-9,
        where);
    assertEquals(speed * 0.004, set.publishedRangeM3PerS(), 1e-15);
    assertEquals(speed * speed * 9.4, set.publishedShutOffHeadM(), 1e-12);
  }

  @Test
  void inParallelEachCarriesItsShare() {
    PumpSet three = set(1, 3, Arrangement.PARALLEL);
    assertEquals(7.8, three.headAt(0.006), 1e-13);
    assertEquals(3 * 380, three.powerAt(0.006).orElseThrow(), 1e-10);
    assertEquals(0.012, three.publishedRangeM3PerS(), 1e-15);
    assertEquals(9.4, three.publishedShutOffHeadM(), 1e-13);
  }

  @Test
  void inSeriesEachGivesItsHead() {
    PumpSet three = set(1, 3, Arrangement.SERIES);
    assertEquals(3 * 7.8, three.headAt(0.002), 1e-13);
    assertEquals(3 * 380, three.powerAt(0.002).orElseThrow(), 1e-10);
    assertEquals(0.004, three.publishedRangeM3PerS(), 1e-15);
    assertEquals(3 * 9.4, three.publishedShutOffHeadM(), 1e-13);
  }

  @Test
  void letsNoWaterBackAndHoldsItsShutOffHead() {
    PumpSet one = set(0.8, 1, Arrangement.PARALLEL);
    assertEquals(0, one.leastFlow());
    assertEquals(-0.64 * 9.4, one.headLossAt(0), 1e-13);
    assertEquals(Double.POSITIVE_INFINITY, one.greatestFlow());
  }

  @Test
  void stoppedIsShutAndDrawsNoPower() {
    PumpSet stopped = set(0, 2, Arrangement.SERIES);
    assertEquals(0, stopped.leastFlow());
    assertEquals(0, stopped.greatestFlow());
    assertEquals(0, stopped.headAt(0));
    assertEquals(0, stopped.powerAt(0).orElseThrow());
  }

  @Test
  void waterRunningBackMeetsTheFirstSlopeAndItsLoss() {
    VelocityHeadLoss loss = new VelocityHeadLoss(15, OUTLET);
    PumpSet two =
        new PumpSet(
            PumpCurveTest.curve("0:10 1:8 2:4"), 0.9, 2, Arrangement.PARALLEL, Optional.of(loss));
    // fitted first slope (3 · −2000 − 1 · −4000)/2 = −1000 m per m³/s at full speed
    double backM3PerS = 0.001;
    double expected = 0.81 * 10 + 0.9 * 1000 * backM3PerS + loss.headLossAt(backM3PerS);
    assertEquals(expected, two.headAt(-2 * backM3PerS), 1e-12);
    assertEquals(Double.NEGATIVE_INFINITY, two.leastFlow());
  }

  @Test
  void stoppedPumpsThatRunBackAreTheirLossAlone() {
    VelocityHeadLoss loss = new VelocityHeadLoss(15, OUTLET);
    PumpSet series = new PumpSet(CURVE, 0, 2, Arrangement.SERIES, Optional.of(loss));
    assertEquals(2 * loss.headLossAt(0.001), series.headLossAt(0.001), 1e-15);
    assertEquals(-2 * loss.headLossAt(0.001), series.headLossAt(-0.001), 1e-15);
    PumpSet parallel = new PumpSet(CURVE, 0, 2, Arrangement.PARALLEL, Optional.of(loss));
    assertEquals(loss.headLossAt(0.0005), parallel.headLossAt(0.001), 1e-15);
  }

  @Test
  void powerIsThatAtNoFlowWhileWaterRunsBack() {
    PumpSet set =
        new PumpSet(
            CURVE, 1, 1, Arrangement.PARALLEL, Optional.of(new VelocityHeadLoss(15, OUTLET)));
    assertEquals(300, set.powerAt(-0.002).orElseThrow(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoSpeed(double speed) {
    assertThrows(IllegalArgumentException.class, () -> set(speed, 1, Arrangement.SERIES));
  }

  @Test
  void refusesToBeNoPump() {
    assertThrows(IllegalArgumentException.class, () -> set(1, 0, Arrangement.SERIES));
  }
}
