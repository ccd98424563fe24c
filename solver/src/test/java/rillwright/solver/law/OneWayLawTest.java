package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.OneWayLaw.Direction;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.skimmer.SkimmerLaw;

class OneWayLawTest implements HeadLawContract {

  @Override
  public Trial trial(SplittableRandom random) {
    return trial(random, Direction.FORWARD);
  }

  private static Trial trial(SplittableRandom random, Direction direction) {
    double flow = Draw.between(random, 1e-4, 0.1);
    PowerLoss loss = new PowerLoss(Draw.between(random, 0.01, 5), flow, 1 + random.nextDouble());
    return Trial.inOnePiece(new OneWayLaw(loss, direction), flow);
  }

  /** With water that runs from the line's last point to its first only. */
  @Nested
  class Backward implements HeadLawContract {
    @Override
    public Trial trial(SplittableRandom random) {
      return OneWayLawTest.trial(random, Direction.BACKWARD);
    }
  }

  @Test
  void keepsTheLawInItsDirectionAndShutsTheOther() {
    PowerLoss loss = new PowerLoss(0.5, 0.002, 2);
    OneWayLaw forward = new OneWayLaw(loss, Direction.FORWARD);
    assertEquals(0, forward.leastFlow());
    assertEquals(Double.POSITIVE_INFINITY, forward.greatestFlow());
    assertEquals(0.5, forward.headLossAt(0.002), 1e-16);
    OneWayLaw backward = new OneWayLaw(loss, Direction.BACKWARD);
    assertEquals(Double.NEGATIVE_INFINITY, backward.leastFlow());
    assertEquals(0, backward.greatestFlow());
    assertEquals(-0.5, backward.headLossAt(-0.002), 1e-16);
  }

  @Test
  void keepsNarrowerBounds() {
    SkimmerLaw skimmer = new SkimmerLaw(0.004, 0.1);
    assertEquals(0.004, new OneWayLaw(skimmer, Direction.FORWARD).greatestFlow());
    assertEquals(0, new OneWayLaw(skimmer, Direction.BACKWARD).leastFlow());
    assertEquals(0, new OneWayLaw(skimmer, Direction.BACKWARD).greatestFlow());
  }
}
