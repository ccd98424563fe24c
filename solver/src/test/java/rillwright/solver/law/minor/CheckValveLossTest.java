package rillwright.solver.law.minor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Draw;
import rillwright.solver.law.HeadLawContract;
import rillwright.solver.law.Trial;

class CheckValveLossTest implements HeadLawContract {

  @Override
  public Trial trial(SplittableRandom random) {
    Bore bore = Draw.bore(random);
    double cracking = random.nextBoolean() ? 0 : Draw.between(random, 0.01, 1);
    return Trial.inOnePiece(
        new CheckValveLoss(cracking, Draw.between(random, 0.5, 40), bore),
        Draw.usualFlowM3PerS(bore));
  }

  @Test
  void letsNothingBackAndHoldsUpToItsCrackingHead() {
    CheckValveLoss valve = new CheckValveLoss(0.15, 2, new Bore(0.05));
    assertEquals(0, valve.leastFlow());
    assertEquals(0.15, valve.headLossAt(valve.leastFlow()));
  }

  @Test
  void takesItsCrackingHeadAndItsLossWhenOpen() {
    Bore bore = new Bore(0.05);
    CheckValveLoss valve = new CheckValveLoss(0.15, 2, bore);
    assertEquals(0.15 + 2 * 1 / (2 * 9.80665), valve.headLossAt(bore.areaM2()), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoCrackingHead(double head) {
    Bore bore = new Bore(0.05);
    assertThrows(IllegalArgumentException.class, () -> new CheckValveLoss(head, 2, bore));
  }
}
