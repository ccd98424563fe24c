package rillwright.solver.law.minor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Draw;
import rillwright.solver.law.HeadLawContract;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Trial;

class VelocityHeadLossTest implements SameBothWaysContract {

  @Override
  public Trial trial(SplittableRandom random) {
    Bore bore = Draw.bore(random);
    return Trial.inOnePiece(
        new VelocityHeadLoss(Draw.between(random, 0.01, 500), bore), Draw.usualFlowM3PerS(bore));
  }

  /** With a K for either direction. */
  @Nested
  class ByDirection implements HeadLawContract {
    @Override
    public Trial trial(SplittableRandom random) {
      Bore bore = Draw.bore(random);
      return Trial.inOnePiece(
          new VelocityHeadLoss(
              Draw.between(random, 0.01, 10), Draw.between(random, 0.01, 10), bore),
          Draw.usualFlowM3PerS(bore));
    }
  }

  /** Where two bores meet. */
  @Nested
  class WhereTheBoreChanges implements HeadLawContract {
    @Override
    public Trial trial(SplittableRandom random) {
      Bore bore = Draw.bore(random);
      return Trial.inOnePiece(
          VelocityHeadLoss.ofChange(bore, bore.times(Draw.between(random, 1.1, 3))),
          Draw.usualFlowM3PerS(bore));
    }
  }

  /**
   * Crane, Technical Paper 410, formulas for sudden changes: 0.5 (1 - β²) on the smaller bore where
   * the pipe narrows, (1 - β²)² where it widens; so too Hydraulic Institute, Engineering Data Book,
   * eq. 3.B.3a.
   */
  @ParameterizedTest(name = "diameters {0}: narrower {1}, wider {2}")
  @CsvSource({"0.2, 0.48, 0.9216", "0.5, 0.375, 0.5625", "0.8, 0.18, 0.1296", "1, 0, 0"})
  void aChangeOfBoreTakesByItsDirection(double ratio, double narrower, double wider) {
    Bore large = new Bore(0.1);
    Bore small = large.times(ratio);
    double flow = 2 * small.areaM2();
    double head = small.velocityHeadAt(flow);
    VelocityHeadLoss reducer = VelocityHeadLoss.ofChange(large, small);
    VelocityHeadLoss enlargement = VelocityHeadLoss.ofChange(small, large);
    assertEquals(narrower * head, reducer.headLossAt(flow), 1e-12);
    assertEquals(wider * head, enlargement.headLossAt(flow), 1e-12);
    assertEquals(-wider * head, reducer.headLossAt(-flow), 1e-12);
    assertEquals(-narrower * head, enlargement.headLossAt(-flow), 1e-12);
  }

  @Test
  void takesKTimesTheVelocityHeadOfItsDirection() {
    Bore bore = new Bore(0.05);
    VelocityHeadLoss end = new VelocityHeadLoss(0.5, 1, bore);
    double flow = 2 * bore.areaM2();
    assertEquals(0.5 * 4 / (2 * 9.80665), end.headLossAt(flow), 1e-15);
    assertEquals(-1.0 * 4 / (2 * 9.80665), end.headLossAt(-flow), 1e-15);
  }

  @Test
  void takesNothingWithoutK() {
    assertEquals(0, new VelocityHeadLoss(0, new Bore(0.05)).headLossAt(0.01));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoK(double k) {
    Bore bore = new Bore(0.05);
    assertThrows(IllegalArgumentException.class, () -> new VelocityHeadLoss(k, bore));
    assertThrows(IllegalArgumentException.class, () -> new VelocityHeadLoss(1, k, bore));
  }
}
