package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

/**
 * What the balance asks of every head law. The test of a law implements this with laws of random
 * parameters.
 */
public interface HeadLawContract {

  /** A law to try. */
  Trial trial(SplittableRandom random);

  /** Whether more flow always takes more head; otherwise it never takes less. */
  default boolean strict() {
    return true;
  }

  @Seeded
  default void moreFlowTakesMoreHead(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Trial trial = trial(random);
    List<Double> flows = trial.flows(random);
    double headScale = headScaleOf(trial);
    for (int i = 1; i < flows.size(); i++) {
      double less = flows.get(i - 1);
      double more = flows.get(i);
      double rise = trial.law().headLossAt(more) - trial.law().headLossAt(less);
      String where = "from " + less + " to " + more + " m³/s, seed " + seed + ", " + trial;
      boolean apart = more - less > 1e-6 * trial.usualFlowM3PerS();
      if (strict() && apart) {
        assertTrue(rise > 0, () -> "rises by " + rise + " m " + where);
      } else {
        assertTrue(rise >= -1e-14 * headScale, () -> "rises by " + rise + " m " + where);
      }
    }
  }

  @Seeded
  default void slopeIsTheDerivativeOfTheHead(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Trial trial = trial(random);
    int tried = 0;
    for (double flow : trial.flows(random)) {
      double step = 1e-4 * trial.roomAround(flow);
      if (step < 1e-11 * trial.usualFlowM3PerS()) {
        continue;
      }
      double above = trial.law().headLossAt(flow + step);
      double below = trial.law().headLossAt(flow - step);
      double expected = (above - below) / ((flow + step) - (flow - step));
      double rounding =
          16 * Math.ulp(Math.abs(above) + Math.abs(below) + headScaleOf(trial)) / step;
      assertEquals(
          expected,
          trial.law().slopeAt(flow),
          1e-6 * Math.abs(expected) + rounding,
          () -> "at " + flow + " m³/s, seed " + seed + ", " + trial);
      tried++;
    }
    assertTrue(
        tried > 50 || trial.law().leastFlow() == trial.law().greatestFlow(), "tried too few");
  }

  @Seeded
  default void headAndSlopeDoNotJumpWherePiecesMeet(long seed) {
    Trial trial = trial(new SplittableRandom(seed));
    HeadLaw law = trial.law();
    for (double joint : trial.innerJoints()) {
      double usual = trial.usualFlowM3PerS();
      double scale = joint == 0 ? usual : Math.min(usual, Math.abs(joint));
      double near = 1e-8 * scale;
      double slopeScale =
          (law.headLossAt(joint + scale / 10) - law.headLossAt(joint - scale / 10)) / (scale / 5);
      String where = "joint at " + joint + " m³/s, seed " + seed + ", " + trial;
      double rise = law.headLossAt(joint + near) - law.headLossAt(joint - near);
      assertEquals(0, rise, 1e-6 * slopeScale * scale + 1e-14 * headScaleOf(trial), where);
      assertEquals(law.slopeAt(joint - near), law.slopeAt(joint + near), 1e-5 * slopeScale, where);
      if (joint != 0) {
        assertEquals(law.slopeAt(joint), law.slopeAt(joint + near), 1e-5 * slopeScale, where);
      }
    }
  }

  @Seeded
  default void slopeIsNeverNegative(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Trial trial = trial(random);
    for (double flow : trial.flows(random)) {
      double slope = trial.law().slopeAt(flow);
      assertTrue(slope >= 0, () -> slope + " at " + flow + " m³/s, seed " + seed + ", " + trial);
    }
  }

  @Seeded
  default void noFlowLiesWithinTheBoundsAndHasAHead(long seed) {
    Trial trial = trial(new SplittableRandom(seed));
    HeadLaw law = trial.law();
    String what = "seed " + seed + ", " + trial;
    assertTrue(law.leastFlow() <= 0 && law.greatestFlow() >= 0, what);
    assertTrue(Double.isFinite(law.headLossAt(0)), what);
    if (Double.isFinite(law.greatestFlow())) {
      assertTrue(Double.isFinite(law.headLossAt(law.greatestFlow())), what);
    }
  }

  private static double headScaleOf(Trial trial) {
    HeadLaw law = trial.law();
    double least = Math.max(law.leastFlow(), -3 * trial.usualFlowM3PerS());
    double greatest = Math.min(law.greatestFlow(), 3 * trial.usualFlowM3PerS());
    return Math.abs(law.headLossAt(least))
        + Math.abs(law.headLossAt(greatest))
        + Math.abs(law.headLossAt(0));
  }
}
