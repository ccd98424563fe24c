package rillwright.solver.law.minor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Draw;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Trial;

class PowerLossTest implements SameBothWaysContract {

  @Override
  public Trial trial(SplittableRandom random) {
    double flow = Draw.between(random, 1e-4, 0.1);
    double exponent = random.nextInt(5) == 0 ? 1 + random.nextInt(2) : 1 + 2 * random.nextDouble();
    return Trial.inOnePiece(new PowerLoss(Draw.between(random, 0.005, 10), flow, exponent), flow);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1.3, 1.852, 2, 2.5})
  void takesItsRatedHeadAtItsRatedFlowAndTheNthPowerOfTwoAtTwice(double exponent) {
    PowerLoss loss = new PowerLoss(1.2, 0.003, exponent);
    assertEquals(1.2, loss.headLossAt(0.003), 1e-15);
    assertEquals(1.2 * Math.pow(2, exponent), loss.headLossAt(0.006), 1e-13);
  }

  @Test
  void straightLossHasItsSlopeAtNoFlowToo() {
    assertEquals(400, new PowerLoss(1.2, 0.003, 1).slopeAt(0), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"0, 1, 2", "1, 0, 2", "1, 1, 0.99", "-1, 1, 2", "NaN, 1, 2", "1, 1, NaN"})
  void refusesWhatIsNoRating(double head, double flow, double exponent) {
    assertThrows(IllegalArgumentException.class, () -> new PowerLoss(head, flow, exponent));
  }
}
