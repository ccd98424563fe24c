package rillwright.solver.study.valvesetting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.study.valvesetting.Garden.balanced;
import static rillwright.solver.study.valvesetting.Garden.pump;
import static rillwright.solver.study.valvesetting.Garden.quadratic;
import static rillwright.solver.study.valvesetting.Garden.set;
import static rillwright.solver.study.valvesetting.Garden.targeted;
import static rillwright.solver.study.valvesetting.Garden.valve;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;

/**
 * A pump up to an outlet at 6 m, and one at 1 m that takes what it can get: both at their targets,
 * the pump must give 6 m, the supply's loss and that of the high way, whose valve takes nothing.
 */
class WaterElsewhereTest {
  private static final double LOW_TARGET = 0.002;
  private static final double HIGH_TARGET = 0.001;
  private static final double SUM = LOW_TARGET + HIGH_TARGET;
  private static final double ASKED = 6 + 100_000 * SUM * SUM + 400_000 * HIGH_TARGET * HIGH_TARGET;

  private static Garden ways(Garden garden, Part low) {
    return garden
        .line("low way", "split", "low", quadratic(50_000), low)
        .line("high way", "split", "high", valve(0), quadratic(400_000));
  }

  /** Pumped, the low way with a part that may be no valve; target 0 for none. */
  private static Network pumped(double shutOffM, double lowTarget, Part low) {
    Garden garden =
        new Garden()
            .basin("pond", 0)
            .tee("split")
            .outlet("low", 1, lowTarget)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "pond", "split", pump(shutOffM, 0.006), quadratic(100_000));
    return ways(garden, low).network();
  }

  @Test
  void headLackingIsThatWithTheOtherFallHeldToItsTarget() {
    // 10 − 10/0.006 · 0.003 = 5 m
    ValveSettings settings = balanced(pumped(10, LOW_TARGET, quadratic(1)));

    assertEquals(Set.of(new PointName("low")), settings.favoured());
    assertEquals(ASKED - 5, settings.missingHeadM().orElseThrow(), 1e-8);
  }

  @Test
  void strongPumpLacksNothingThoughAFallFallsShort() {
    // 16 − 16/0.006 · 0.003 = 8 m
    ValveSettings settings = balanced(pumped(16, LOW_TARGET, quadratic(1)));

    assertTrue(settings.targetFraction() < 1, () -> "" + settings.targetFraction());
    assertEquals(0, settings.missingHeadM().orElseThrow());
  }

  @Test
  void valveToAFallWithoutATargetCountsAsClosed() {
    // alone the high outlet asks for 6 + 0.1 + 0.4 m at 1 L/s: 9 − 9/0.006 · 0.001 = 7.5 m
    ValveSettings settings = balanced(pumped(9, 0, valve(0)));
    assertTrue(settings.targetFraction() < 1, () -> "" + settings.targetFraction());
    assertEquals(0, settings.missingHeadM().orElseThrow());

    // 7 − 7/0.006 · 0.001 = 5.833 m
    assertEquals(
        6.5 - 7 + 7.0 / 6, balanced(pumped(7, 0, valve(0))).missingHeadM().orElseThrow(), 1e-8);
  }

  private static Network downhill(double levelM, Part low) {
    Garden garden =
        new Garden()
            .basin("reservoir", levelM)
            .tee("split")
            .outlet("low", 1, LOW_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "reservoir", "split", quadratic(100_000));
    return ways(garden, low).network();
  }

  @Test
  void withoutAPumpHeadIsEnoughOrItIsNot() {
    ValveSettings enough = balanced(downhill(ASKED + 0.1, quadratic(1)));
    assertTrue(enough.targetFraction() < 1, () -> "" + enough.targetFraction());
    assertEquals(0, enough.missingHeadM().orElseThrow());

    assertEquals(
        OptionalDouble.empty(), balanced(downhill(ASKED - 0.1, quadratic(1))).missingHeadM());
  }

  @Test
  void targetsAreHeldOnlyWhereThatWasAskedAndThereIsMore() {
    Network more = downhill(ASKED + 1, valve(0));
    assertTrue(targeted(more).heldToTargets());
    assertFalse(balanced(more).heldToTargets());
    assertFalse(targeted(downhill(ASKED - 0.1, valve(0))).heldToTargets());
  }

  @Test
  void waterHeldBackGoesToTheOtherOnlyWhereTheyShareAWay() {
    assertTrue(Interplay.isIn(balanced(downhill(ASKED + 1, valve(0)))));

    Network apart =
        new Garden()
            .basin("reservoir", 10)
            .outlet("low", 1, LOW_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("low way", "reservoir", "low", quadratic(50_000), valve(0))
            .line("high way", "reservoir", "high", quadratic(400_000), valve(0))
            .network();
    ValveSettings settings = balanced(apart);
    assertFalse(settings.listThrottled().isEmpty());
    assertFalse(Interplay.isIn(settings));
  }

  /** What was found so far is answered, what it gives is computed, and no head is made up. */
  @Test
  void searchWithoutWorkLeftStandsWhereItIs() {
    Network garden = pumped(10, LOW_TARGET, valve(0));
    ValveSettings whole = balanced(garden);
    List<ValvePlace> places = whole.valves().stream().map(SetValve::place).toList();
    ValveSettings cut =
        ValveSettingFinder.find(garden, places, Aim.LARGEST_SHARE, new SearchLeft(0));
    ValveSettings asked = ValveSettingFinder.find(garden, places, Aim.TARGET, new SearchLeft(0));
    assertFalse(asked.heldToTargets(), "a share that was never tried is no evidence");
    assertTrue(asked.cutShort());
    assertFalse(whole.cutShort());
    assertTrue(whole.missingHeadM().orElseThrow() > 0);
    assertTrue(cut.cutShort());
    assertFalse(cut.headIsKnown());
    assertEquals(OptionalDouble.empty(), cut.missingHeadM());
    assertTrue(cut.targetFraction() <= whole.targetFraction() + 1e-9, () -> "" + cut);
    double least =
        cut.listWaysOut().stream()
            .mapToDouble(it -> it.outflowM3PerS() / it.point().targetM3PerS().orElseThrow())
            .min()
            .orElseThrow();
    assertEquals(least, cut.targetFraction(), 1e-12);
  }

  @Test
  void gateIsReportedByPercentAndABallByBoth() {
    SetValve gate = set(balanced(downhill(9, valve(ValveTravel.GATE))), "low way");
    assertTrue(gate.sensitivityM3PerSPerDegree().isEmpty());
    assertTrue(gate.sensitivityM3PerSPerPercent().orElseThrow() > 0);

    SetValve ball = set(balanced(downhill(9, valve(ValveTravel.BALL))), "low way");
    assertEquals(
        0.9 * ball.sensitivityM3PerSPerDegree().orElseThrow(),
        ball.sensitivityM3PerSPerPercent().orElseThrow(),
        1e-12);
  }
}
