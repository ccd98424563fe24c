package rillwright.solver.law.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Draw;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Shut;
import rillwright.solver.law.Trial;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.skimmer.SkimmerLaw;

class CloggedLawTest implements SameBothWaysContract {

  @Override
  public Trial trial(SplittableRandom random) {
    double flow = Draw.between(random, 1e-4, 0.1);
    double openShare = Draw.between(random, 0.02, 1);
    PowerLoss clean = new PowerLoss(Draw.between(random, 0.01, 3), flow, 1 + random.nextDouble());
    return Trial.inOnePiece(new CloggedLaw(clean, openShare), flow * openShare);
  }

  @Test
  void openShareCarriesAllTheFlow() {
    PowerLoss clean = new PowerLoss(0.5, 0.002, 2);
    CloggedLaw half = new CloggedLaw(clean, 0.5);
    assertEquals(4 * 0.5, half.headLossAt(0.002), 1e-15);
    assertEquals(clean.headLossAt(0.004), half.headLossAt(0.002));
  }

  @Test
  void isCleanWhenAllIsOpen() {
    PowerLoss clean = new PowerLoss(0.5, 0.002, 1.5);
    assertEquals(clean.headLossAt(0.003), new CloggedLaw(clean, 1).headLossAt(0.003));
  }

  @Test
  void boundsOfTheFlowShrinkWithTheOpenShare() {
    assertEquals(0.001, new CloggedLaw(new SkimmerLaw(0.004, 0.1), 0.25).greatestFlow());
    assertEquals(0, new CloggedLaw(new Shut(), 0.25).leastFlow());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
  void refusesWhatIsNoOpenShare(double share) {
    PowerLoss clean = new PowerLoss(0.5, 0.002, 2);
    assertThrows(IllegalArgumentException.class, () -> new CloggedLaw(clean, share));
  }
}
