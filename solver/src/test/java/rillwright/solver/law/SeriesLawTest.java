package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.minor.CheckValveLoss;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.skimmer.SkimmerLaw;

class SeriesLawTest implements HeadLawContract {

  @Override
  public Trial trial(SplittableRandom random) {
    Bore bore = Draw.bore(random);
    double flow = Draw.usualFlowM3PerS(bore);
    List<HeadLaw> laws = new ArrayList<>();
    laws.add(new VelocityHeadLoss(0.5, 1, bore));
    laws.add(new PowerLoss(Draw.between(random, 0.01, 5), flow, 1 + random.nextDouble()));
    if (random.nextBoolean()) {
      laws.add(new CheckValveLoss(0.1, 2, bore));
    }
    if (random.nextBoolean()) {
      laws.add(new SkimmerLaw(2 * flow, 0.1));
    }
    return Trial.inOnePiece(new SeriesLaw(laws), flow);
  }

  @Test
  void addsHeadsAndSlopes() {
    HeadLaw one = new PowerLoss(2, 0.001, 2);
    HeadLaw other = new PowerLoss(3, 0.001, 1);
    SeriesLaw both = new SeriesLaw(List.of(one, other));
    assertEquals(5, both.headLossAt(0.001), 1e-15);
    assertEquals(2 * 2 / 0.001 + 3 / 0.001, both.slopeAt(0.001), 1e-11);
    assertEquals(-(2 * 4 + 3 * 2), both.headLossAt(-0.002), 1e-14);
  }

  @Test
  void allowsTheFlowsThatAllItsLawsAllow() {
    SeriesLaw law =
        new SeriesLaw(
            List.of(
                new CheckValveLoss(0, 2, new Bore(0.05)),
                NoLoss.bothWays(),
                new SkimmerLaw(0.004, 0.1),
                new SkimmerLaw(0.003, 0.1)));
    assertEquals(0, law.leastFlow());
    assertEquals(0.003, law.greatestFlow());
  }

  @Test
  void isShutAsSoonAsOneOfItsLawsIs() {
    SeriesLaw law = new SeriesLaw(List.of(NoLoss.bothWays(), new Shut()));
    assertEquals(0, law.leastFlow());
    assertEquals(0, law.greatestFlow());
  }

  @Test
  void takesNothingWithoutLaws() {
    SeriesLaw empty = new SeriesLaw(List.of());
    assertEquals(0, empty.headLossAt(1));
    assertEquals(Double.NEGATIVE_INFINITY, empty.leastFlow());
    assertEquals(Double.POSITIVE_INFINITY, empty.greatestFlow());
  }
}
