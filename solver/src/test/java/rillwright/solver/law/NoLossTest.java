package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NoLossTest implements HeadLawContract {

  @Override
  public Trial trial(SplittableRandom random) {
    return Trial.inOnePiece(
        random.nextBoolean() ? NoLoss.bothWays() : NoLoss.forwardOnly(),
        Draw.between(random, 1e-5, 1));
  }

  @Override
  public boolean strict() {
    return false;
  }

  @Test
  void takesNothingAtAnyFlow() {
    assertEquals(0, NoLoss.bothWays().headLossAt(-3));
    assertEquals(0, NoLoss.bothWays().headLossAt(1e6));
  }

  @Test
  void letsWaterBackOnlyWhereItIsOpenBothWays() {
    assertEquals(Double.NEGATIVE_INFINITY, NoLoss.bothWays().leastFlow());
    assertEquals(0, NoLoss.forwardOnly().leastFlow());
  }
}
