package rillwright.solver.law.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Draw;
import rillwright.solver.law.HeadLawContract;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.Trial;
import rillwright.solver.law.minor.PowerLoss;

/** Mats that take 0.4 m at 1 L/s, as its square, in a box of 0.1 m: worked by hand. */
class OpenTopLawTest implements HeadLawContract {
  private static final OpenTopLaw LAW = new OpenTopLaw(new PowerLoss(0.4, 1e-3, 2), 0.1);

  /** Mats whose water goes over from a share of the flow at which they are rated. */
  @Override
  public Trial trial(SplittableRandom random) {
    double flow = Draw.between(random, 1e-4, 0.1);
    double rated = Draw.between(random, 0.01, 5);
    double share = Draw.between(random, 0.2, 2);
    return Trial.withJointsBothWays(
        new OpenTopLaw(new PowerLoss(rated, flow, 2), rated * share * share),
        flow,
        List.of(share * flow));
  }

  @Override
  public boolean strict() {
    return false;
  }

  /** Its slope falls to 0 where water goes over; its head does not jump there. */
  @Override
  @Seeded
  public void headAndSlopeDoNotJumpWherePiecesMeet(long seed) {
    Trial trial = trial(new SplittableRandom(seed));
    for (double joint : trial.innerJoints()) {
      double near = 1e-8 * trial.usualFlowM3PerS();
      double rise = trial.law().headLossAt(joint + near) - trial.law().headLossAt(joint - near);
      double steepest = 2 * trial.law().slopeAt(trial.jointsM3PerS().get(0) - near);
      assertEquals(0, rise, steepest * 2 * near, () -> "at " + joint + ", " + trial);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "0.00025, 0.025, 0.00025",
    "0.0005, 0.1, 0.0005",
    "0.001, 0.1, 0.0005",
    "0.1, 0.1, 0.0005"
  })
  void takesNoMoreThanItIsHigh(double flow, double loss, double passed) {
    assertEquals(loss, LAW.headLossAt(flow), 1e-12);
    assertEquals(-loss, LAW.headLossAt(-flow), 1e-12);
    assertEquals(passed, LAW.passedAt(flow), 1e-12);
  }

  @Test
  void whatGoesOverCostsNothingMore() {
    assertEquals(0, LAW.slopeAt(1e-3));
    assertEquals(2 * 0.4 * 2.5e-4 / 1e-6, LAW.slopeAt(2.5e-4), 1e-9);
  }
}
