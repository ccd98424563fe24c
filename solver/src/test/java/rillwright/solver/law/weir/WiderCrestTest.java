package rillwright.solver.law.weir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WiderCrestTest implements WeirContract {

  @Override
  public Weir weir(SplittableRandom random) {
    Weir drawn = PowerWeir.ofDischargeCoefficient(0.5 + 0.2 * random.nextDouble(), 0.6);
    return new WiderCrest(drawn, 0.5 + 2 * random.nextDouble());
  }

  /** A rectangular crest of twice the width is that crest. */
  @ParameterizedTest
  @ValueSource(doubles = {0.005, 0.02, 0.1})
  void isTheCrestOfThatWidth(double head) {
    Weir drawn = new PowerWeir(1.6, 0.61, BrinkRule.FREE_OVERFALL);
    Weir wide = new PowerWeir(1.6, 1.22, BrinkRule.FREE_OVERFALL);
    Weir wider = new WiderCrest(drawn, 2);
    double flow = wide.flowAt(head);
    assertEquals(flow, wider.flowAt(head), 1e-15);
    assertEquals(head, wider.rulerHeadAt(flow), 1e-15);
    assertEquals(
        wide.brinkDepthAt(flow).orElseThrow(), wider.brinkDepthAt(flow).orElseThrow(), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void refusesWhatIsNoWidth(double factor) {
    Weir drawn = new PowerWeir(1.6, 0.61, BrinkRule.FREE_OVERFALL);
    assertThrows(IllegalArgumentException.class, () -> new WiderCrest(drawn, factor));
  }
}
