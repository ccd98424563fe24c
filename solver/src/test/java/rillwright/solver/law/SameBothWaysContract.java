package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;

/** What a law promises besides that is the same in both directions. */
public interface SameBothWaysContract extends HeadLawContract {

  @Seeded
  default void waterRunningBackMeetsTheSameHead(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Trial trial = trial(random);
    HeadLaw law = trial.law();
    assertEquals(Double.NEGATIVE_INFINITY, law.leastFlow(), "seed " + seed);
    assertEquals(Double.POSITIVE_INFINITY, law.greatestFlow(), "seed " + seed);
    assertEquals(0, law.headLossAt(0), "seed " + seed);
    for (double flow : trial.flows(random)) {
      String where = "at " + flow + " m³/s, seed " + seed + ", " + trial;
      assertEquals(0, law.headLossAt(flow) + law.headLossAt(-flow), where);
      assertEquals(law.slopeAt(flow), law.slopeAt(-flow), where);
    }
  }
}
