package rillwright.solver.law.minor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Draw;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Trial;

class BackwaterLossTest implements SameBothWaysContract {

  @Override
  public Trial trial(SplittableRandom random) {
    return Trial.inOnePiece(new BackwaterLoss(Draw.between(random, 0.01, 1)), 3e-6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.003, 0.02})
  void standsAtItsHeadWhateverFlowsAndDrainsWhenNothingDoes(double flow) {
    BackwaterLoss full = new BackwaterLoss(0.35);
    assertEquals(0.35, full.headLossAt(flow), 0.35 * 1.1e-3);
    assertEquals(0, full.headLossAt(0));
  }

  @Test
  void refusesWhatIsNoHead() {
    assertThrows(IllegalArgumentException.class, () -> new BackwaterLoss(-0.01));
    assertThrows(IllegalArgumentException.class, () -> new BackwaterLoss(Double.NaN));
  }
}
