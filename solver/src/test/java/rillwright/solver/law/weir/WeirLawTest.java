package rillwright.solver.law.weir;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Draw;
import rillwright.solver.law.HeadLawContract;
import rillwright.solver.law.Trial;

/** Each weir's own test tries its law too. */
class WeirLawTest implements HeadLawContract {

  @Override
  public Trial trial(SplittableRandom random) {
    PowerWeir weir =
        PowerWeir.ofDischargeCoefficient(
            Draw.between(random, 0.5, 0.7), Draw.between(random, 0.1, 3));
    return Trial.inOnePiece(new WeirLaw(weir), weir.flowAt(Draw.between(random, 0.003, 0.3)));
  }

  @Test
  void headIsThatUpstreamOfTheCrest() {
    PowerWeir weir = new PowerWeir(1.6, 0.5, BrinkRule.FREE_OVERFALL);
    WeirLaw law = new WeirLaw(weir);
    assertEquals(0.04, law.headLossAt(1.6 * 0.5 * 0.008), 1e-16);
    assertEquals(1 / weir.flowSlopeAt(0.04), law.slopeAt(1.6 * 0.5 * 0.008), 1e-12);
  }
}
