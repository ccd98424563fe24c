package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ShutTest implements HeadLawContract {

  @Override
  public Trial trial(SplittableRandom random) {
    return Trial.inOnePiece(new Shut(), Draw.between(random, 1e-5, 1));
  }

  @Override
  public boolean strict() {
    return false;
  }

  @Test
  void carriesNothingEitherWay() {
    assertEquals(0, new Shut().leastFlow());
    assertEquals(0, new Shut().greatestFlow());
  }
}
