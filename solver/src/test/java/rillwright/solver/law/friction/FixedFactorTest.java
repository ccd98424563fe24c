package rillwright.solver.law.friction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Draw;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Trial;

class FixedFactorTest implements SameBothWaysContract {

  @Override
  public Trial trial(SplittableRandom random) {
    Bore bore = Draw.bore(random);
    return Trial.inOnePiece(
        new FixedFactor(Draw.between(random, 0.1, 500), bore, Draw.between(random, 0.008, 0.1)),
        Draw.usualFlowM3PerS(bore));
  }

  /** One pipe worked by hand: f L/D = 20, V = 1 m/s. */
  @Test
  void takesItsFactorTimesLengthOverBoreTimesTheVelocityHead() {
    Bore bore = new Bore(0.1);
    FixedFactor pipe = new FixedFactor(100, bore, 0.02);
    assertEquals(20 / (2 * 9.80665), pipe.headLossAt(bore.areaM2()), 1e-14);
    assertEquals(0.02, pipe.darcyFrictionFactorAt(0.001));
  }

  @Test
  void refusesANegativeFactor() {
    Bore bore = new Bore(0.1);
    assertThrows(IllegalArgumentException.class, () -> new FixedFactor(10, bore, -0.02));
  }
}
