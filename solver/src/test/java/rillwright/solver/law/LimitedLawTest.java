package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.OneWayLaw.Direction;
import rillwright.solver.law.minor.PowerLoss;

class LimitedLawTest implements HeadLawContract {

  @Override
  public Trial trial(SplittableRandom random) {
    double flow = Draw.between(random, 1e-4, 0.1);
    PowerLoss loss = new PowerLoss(Draw.between(random, 0.01, 5), flow, 1 + random.nextDouble());
    return Trial.inOnePiece(new LimitedLaw(loss, Draw.between(random, 0.2, 2) * flow), flow);
  }

  @Test
  void letsNoMoreThanItsLimitThroughEitherWay() {
    LimitedLaw law = new LimitedLaw(new PowerLoss(0.5, 0.002, 2), 0.003);
    assertEquals(0.003, law.greatestFlow());
    assertEquals(-0.003, law.leastFlow());
    assertEquals(0.5, law.headLossAt(0.002), 1e-16);
  }

  @Test
  void keepsTheBoundsOfItsLaw() {
    HeadLaw forward = new OneWayLaw(new PowerLoss(0.5, 0.002, 2), Direction.FORWARD);
    assertEquals(0, new LimitedLaw(forward, 0.003).leastFlow());
  }

  @Test
  void limitsAreNoughtOrMore() {
    assertThrows(IllegalArgumentException.class, () -> new LimitedLaw(NoLoss.bothWays(), -1));
    assertThrows(
        IllegalArgumentException.class, () -> new LimitedLaw(NoLoss.bothWays(), Double.NaN));
  }
}
