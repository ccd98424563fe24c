package rillwright.solver.study.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.LeastShutOff;
import rillwright.solver.pumping.PumpPlace;

/**
 * Two falls downstream of one pump whose losses are k Q², so that the duty can be worked out by
 * hand.
 */
class DutyFinderTest {
  private static final double HIGH_M3_PER_S = 0.002;
  private static final double LOW_M3_PER_S = 0.001;
  private static final double K_COMMON = 1e5;
  private static final double K_WAY = 2e5;
  private static final PowerWeir WEIR = new PowerWeir(1.6, 0.75, BrinkRule.FREE_OVERFALL);

  private static LineParts loss(double k) {
    return LineParts.of(new Loss(new PowerLoss(k, 1, 2), Optional.empty()));
  }

  private static Duty duty(double lowCrestM) {
    Network network =
        new NetworkBuilder()
            .basin("pond", 0)
            .tee("split", 0)
            .fall("high", 2, WEIR, HIGH_M3_PER_S)
            .fall("low", lowCrestM, WEIR, LOW_M3_PER_S)
            .line("supply", "pond", "split", loss(K_COMMON).part(new PlannedPump()))
            .line("to high", "split", "high", loss(K_WAY))
            .line("to low", "split", "low", loss(K_WAY))
            .build();
    return DutyFinder.find(network, PumpPlace.listPlanned(network).get(0));
  }

  /** Head at the split that brings a fall its target. */
  private static double splitM(double crestM, double flowM3PerS) {
    return crestM + Math.pow(flowM3PerS / (1.6 * 0.75), 2.0 / 3) + K_WAY * flowM3PerS * flowM3PerS;
  }

  @Test
  void throttledTheSumOfTheTargetsAtTheHeadOfTheGoverningFall() {
    Duty duty = duty(1);
    double sum = HIGH_M3_PER_S + LOW_M3_PER_S;
    assertEquals(Optional.of(new PointName("high")), duty.governing());
    assertEquals(sum, duty.throttled().orElseThrow().flowM3PerS(), 1e-9);
    assertEquals(
        splitM(2, HIGH_M3_PER_S) + K_COMMON * sum * sum,
        duty.throttled().orElseThrow().headM(),
        1e-6);
  }

  @Test
  void asTheyStandTheLowFallTakesMoreThanItsTarget() {
    Duty.AsTheyStand stand = duty(1).asTheyStand().orElseThrow();
    double low = stand.fallsM3PerS().get(new PointName("low"));
    assertEquals(HIGH_M3_PER_S, stand.fallsM3PerS().get(new PointName("high")), 1e-9);
    assertEquals(splitM(2, HIGH_M3_PER_S), splitM(1, low), 1e-6);
    assertEquals(HIGH_M3_PER_S + low, stand.flowM3PerS(), 1e-9);
    assertEquals(
        splitM(2, HIGH_M3_PER_S) + K_COMMON * stand.flowM3PerS() * stand.flowM3PerS(),
        stand.headM(),
        1e-6);
  }

  @Test
  void fallThatNeedsTheMoreHeadGoverns() {
    assertEquals(Optional.of(new PointName("low")), duty(3).governing());
    assertTrue(duty(3).greatestFlowM3PerS().isEmpty());
  }

  /** Fed from a tank above, with no pump needed: the head is not that of the fall written first. */
  @Test
  void whereNoPumpIsNeededTheOrderOfTheFallsChangesNoHead() {
    assertEquals(fromAbove("high", 2, "low", 1), fromAbove("low", 1, "high", 2), 1e-6);
  }

  private static double fromAbove(String one, double oneM, String other, double otherM) {
    Network network =
        new NetworkBuilder()
            .basin("pond", 0)
            .basin("tank", 6)
            .tee("split", 0)
            .fall(one, oneM, WEIR, LOW_M3_PER_S)
            .fall(other, otherM, WEIR, LOW_M3_PER_S)
            .line("supply", "pond", "split", loss(K_COMMON).part(new PlannedPump()))
            .line("down", "tank", "split", loss(K_COMMON))
            .line("to " + one, "split", one, loss(K_WAY))
            .line("to " + other, "split", other, loss(K_WAY))
            .build();
    Duty duty = DutyFinder.find(network, PumpPlace.listPlanned(network).get(0));
    assertEquals(0, duty.throttled().orElseThrow().flowM3PerS(), 1e-9);
    return duty.throttled().orElseThrow().headM();
  }

  /**
   * A loss that counts how often it is asked for its head: once for each head that is looked for.
   */
  private static final class Counted implements HeadLaw {
    private final HeadLaw law = new PowerLoss(K_COMMON, 1, 2);
    private int asked;

    @Override
    public double headLossAt(double flowM3PerS) {
      asked++;
      return law.headLossAt(flowM3PerS);
    }

    @Override
    public double slopeAt(double flowM3PerS) {
      return law.slopeAt(flowM3PerS);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {10, 40, 160})
  void manyFallsAskForNoMoreHeadsThanFew(int falls) {
    Counted common = new Counted();
    SplittableRandom random = new SplittableRandom(falls);
    NetworkBuilder builder = new NetworkBuilder().basin("pond", 0).tee("split", 0);
    LineParts supply = LineParts.of(new Loss(common, Optional.empty())).part(new PlannedPump());
    builder.line("supply", "pond", "split", supply);
    double highest = 0;
    String governing = "";
    for (int i = 0; i < falls; i++) {
      double crest = 0.5 + random.nextDouble();
      double target = LOW_M3_PER_S * (0.5 + random.nextDouble());
      builder.fall("fall " + i, crest, WEIR, target);
      builder.line("to " + i, "split", "fall " + i, loss(K_WAY));
      governing = splitM(crest, target) > highest ? "fall " + i : governing;
      highest = Math.max(highest, splitM(crest, target));
    }
    Network network = builder.build();
    common.asked = 0;
    Duty duty = DutyFinder.find(network, PumpPlace.listPlanned(network).get(0));
    assertEquals(Optional.of(new PointName(governing)), duty.governing());
    double sum = duty.throttled().orElseThrow().flowM3PerS();
    double head = duty.throttled().orElseThrow().headM();
    assertEquals(highest + K_COMMON * sum * sum, head, 1e-6);
    assertTrue(common.asked < 40, common.asked + " heads");
  }

  /** Tees side by side: 20 loops one after the other have a million ways through. */
  @Test
  void theWayOverHighPointsIsTheOneThatAsksForTheLeast() {
    NetworkBuilder builder = new NetworkBuilder().basin("pond", 0).tee("tee 0", 0);
    builder.line("supply", "pond", "tee 0", loss(K_COMMON).part(new PlannedPump()));
    for (int i = 0; i < 20; i++) {
      builder.tee("tee " + (i + 1), 0);
      for (double high : new double[] {1, 1.5}) {
        LineParts over = loss(K_WAY).part(new HighPoint(high, Optional.of(new Bore(0.05))));
        builder.line("over " + high + " " + i, "tee " + i, "tee " + (i + 1), over);
      }
    }
    builder.fall("high", 0.5, WEIR, HIGH_M3_PER_S);
    builder.line("to high", "tee 20", "high", loss(K_WAY));
    Network network = builder.build();
    PumpPlace place = PumpPlace.listPlanned(network).get(0);
    assertEquals(1, LeastShutOff.at(network, place).orElseThrow().headM(), 1e-12);
  }
}
