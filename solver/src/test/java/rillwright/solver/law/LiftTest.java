package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LiftTest implements HeadLawContract {

  @Override
  public Trial trial(SplittableRandom random) {
    return Trial.inOnePiece(new Lift(random.nextDouble(-5, 5)), Draw.between(random, 1e-5, 1));
  }

  @Override
  public boolean strict() {
    return false;
  }

  @Test
  void givesItsHeadAtEveryFlow() {
    assertEquals(-2.5, new Lift(2.5).headLossAt(0.01));
    assertEquals(-2.5, new Lift(2.5).headLossAt(-0.01));
  }

  @Test
  void headIsFinite() {
    assertThrows(IllegalArgumentException.class, () -> new Lift(Double.POSITIVE_INFINITY));
  }
}
