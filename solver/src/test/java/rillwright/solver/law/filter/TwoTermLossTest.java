package rillwright.solver.law.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Draw;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Trial;

class TwoTermLossTest implements SameBothWaysContract {

  @Override
  public Trial trial(SplittableRandom random) {
    double flow = Draw.between(random, 1e-4, 0.1);
    double linear = random.nextInt(4) == 0 ? 0 : Draw.between(random, 0.01, 10) / flow;
    double quadratic =
        linear > 0 && random.nextInt(4) == 0 ? 0 : Draw.between(random, 0.01, 10) / (flow * flow);
    return Trial.inOnePiece(new TwoTermLoss(linear, quadratic), flow);
  }

  @Test
  void addsAStraightAndASquareTerm() {
    TwoTermLoss loss = new TwoTermLoss(100, 20_000);
    assertEquals(0.1 + 0.02, loss.headLossAt(0.001), 1e-16);
    assertEquals(-(0.2 + 0.08), loss.headLossAt(-0.002), 1e-16);
    assertEquals(100, loss.slopeAt(0));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "-1, 1", "1, -1", "NaN, 1", "1, Infinity"})
  void refusesWhatIsNoLoss(double linear, double quadratic) {
    assertThrows(IllegalArgumentException.class, () -> new TwoTermLoss(linear, quadratic));
  }
}
