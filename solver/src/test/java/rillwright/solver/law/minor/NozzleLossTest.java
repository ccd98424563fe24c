package rillwright.solver.law.minor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Draw;
import rillwright.solver.law.HeadLawContract;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Trial;

class NozzleLossTest implements SameBothWaysContract {

  @Override
  public Trial trial(SplittableRandom random) {
    return trial(random, Double.NEGATIVE_INFINITY);
  }

  private static Trial trial(SplittableRandom random, double leastFlow) {
    Bore opening = new Bore(Draw.between(random, 0.002, 0.1));
    double coefficient = Draw.between(random, 0.5, 1);
    return Trial.inOnePiece(
        new NozzleLoss(opening, coefficient, leastFlow), 4 * Draw.usualFlowM3PerS(opening));
  }

  /** In air, where nothing comes back. */
  @Nested
  class InAir implements HeadLawContract {
    @Override
    public Trial trial(SplittableRandom random) {
      return NozzleLossTest.trial(random, 0);
    }

    @Test
    void doesNotSuck() {
      assertEquals(0, new NozzleLoss(new Bore(0.01), 0.97, 0).leastFlow());
    }
  }

  /** Torricelli: a frictionless opening under a head h spouts at √(2 g h). */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.5, 3, 40})
  void idealOpeningSpoutsAtTorricellisVelocity(double headM) {
    Bore opening = new Bore(0.02);
    double flow = Math.sqrt(2 * 9.80665 * headM) * opening.areaM2();
    NozzleLoss nozzle = new NozzleLoss(opening, 1, 0);
    assertEquals(headM, nozzle.headLossAt(flow), 1e-14 * headM);
  }

  /** Computed by hand: 10 mm, Cd 0.97, 1 m of head: 0.97 · π/4 · 1e-4 · √19.6133 = 0.33739 L/s. */
  @Test
  void tenMillimetresUnderOneMetre() {
    assertEquals(1, new NozzleLoss(new Bore(0.01), 0.97, 0).headLossAt(0.33739e-3), 5e-5);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.6, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoCoefficient(double coefficient) {
    Bore opening = new Bore(0.01);
    assertThrows(IllegalArgumentException.class, () -> new NozzleLoss(opening, coefficient, 0));
  }
}
