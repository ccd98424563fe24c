package rillwright.solver.law.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** By ρ g Q H with ρ = 1000 kg/m³: 1 L/s at 10 m are 98.0665 W, 2 L/s at 8 m are 156.9064 W. */
class MoreOutThanInTest {
  private static PumpCurve curve(double wattsAtOne, double wattsAtTwo) {
    return new PumpCurve(
        List.of(
            new PumpPoint(0, 11, OptionalDouble.of(50)),
            new PumpPoint(0.001, 10, OptionalDouble.of(wattsAtOne)),
            new PumpPoint(0.002, 8, OptionalDouble.of(wattsAtTwo)),
            new PumpPoint(0.004, 0, OptionalDouble.of(400))));
  }

  @Test
  void worstPublishedPointIsReported() {
    MoreOutThanIn worst = MoreOutThanIn.find(curve(98, 100), 1000).orElseThrow();

    assertEquals(0.002, worst.flowM3PerS());
    assertEquals(156.9064, worst.waterPowerW(), 1e-9);
    assertEquals(100, worst.powerW(), 1e-9);
    assertEquals(0.001, MoreOutThanIn.find(curve(98, 157), 1000).orElseThrow().flowM3PerS());
  }

  @Test
  void sheetByWhichLessComesOutIsPossible() {
    assertEquals(Optional.empty(), MoreOutThanIn.find(curve(200, 300), 1000));
  }

  @Test
  void flowsBetweenThePointsCountToo() {
    // straight lines: at 2 L/s half of 10 m are 98.0665 W, of 60 W at both ends
    PumpCurve curve =
        new PumpCurve(
            List.of(
                new PumpPoint(0, 10, OptionalDouble.of(60)),
                new PumpPoint(0.004, 0, OptionalDouble.of(60))));

    MoreOutThanIn worst = MoreOutThanIn.find(curve, 1000).orElseThrow();
    assertEquals(0.002, worst.flowM3PerS(), 1e-12);
    assertEquals(98.0665, worst.waterPowerW(), 1e-9);
  }

  @Test
  void sheetWithoutPowerSaysNothing() {
    OptionalDouble none = OptionalDouble.empty();
    PumpCurve curve =
        new PumpCurve(List.of(new PumpPoint(0, 10, none), new PumpPoint(0.004, 0, none)));
    assertTrue(MoreOutThanIn.find(curve, 1000).isEmpty());
  }
}
