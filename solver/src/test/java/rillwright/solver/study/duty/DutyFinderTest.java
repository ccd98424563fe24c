package rillwright.solver.study.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.PumpPlace;

/** Two falls behind one pump whose losses are k Q², so that the duty can be worked out by hand. */
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

  /** Head at the split that brings a fall its wish. */
  private static double splitM(double crestM, double flowM3PerS) {
    return crestM + Math.pow(flowM3PerS / (1.6 * 0.75), 2.0 / 3) + K_WAY * flowM3PerS * flowM3PerS;
  }

  @Test
  void throttledTheSumOfTheWishesAtTheHeadOfTheGoverningFall() {
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
  void asTheyStandTheLowFallTakesMoreThanItsWish() {
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
}
