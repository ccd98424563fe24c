package rillwright.solver.study.valvesetting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.study.valvesetting.Garden.balanced;
import static rillwright.solver.study.valvesetting.Garden.ball;
import static rillwright.solver.study.valvesetting.Garden.pump;
import static rillwright.solver.study.valvesetting.Garden.quadratic;
import static rillwright.solver.study.valvesetting.Garden.set;
import static rillwright.solver.study.valvesetting.Garden.share;
import static rillwright.solver.study.valvesetting.Garden.skimmer;
import static rillwright.solver.study.valvesetting.Garden.valve;

import java.util.Set;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.valvesetting.SetValve.Role;

/** Ways without a valve, with several, with one that is too coarse, or out of the pump's reach. */
class UnevenWaysTest {
  private static final double LOW_TARGET = 0.002;
  private static final double HIGH_TARGET = 0.001;
  private static final double SUPPLY = 100_000;
  private static final double LOW = 50_000;
  private static final double HIGH = 400_000;

  @Test
  void noMoreHeadHelpsWhereTheSkimmerPassesTooLittle() {
    Network network =
        new Garden()
            .basin("pond", 0)
            .chamber("chamber", -0.5)
            .fall("one", 2, 0.02)
            .fall("two", 3, 0.02)
            .tee("split")
            .line("intake", "pond", "chamber", skimmer(0.3, -0.1))
            .line("supply", "chamber", "split", pump(9, 0.04))
            .line("first", "split", "one", quadratic(1000), ball())
            .line("second", "split", "two", quadratic(1000), ball())
            .network();

    ValveSettings settings = balanced(network);

    assertTrue(settings.missingHeadM().isEmpty());
    assertTrue(settings.state().point(new PointName("chamber")).isStarved());
    assertEquals(share(settings, "one"), share(settings, "two"), 1e-6 * settings.targetFraction());
  }

  /** The low outlet has no valve: it takes what it takes, and the others share the rest. */
  @Test
  void fallWithoutAValveKeepsMoreThanTheShareAndIsNamed() {
    Network network =
        new Garden()
            .basin("reservoir", 10)
            .tee("split")
            .outlet("low", 1, LOW_TARGET)
            .outlet("middle", 4, HIGH_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "reservoir", "split", quadratic(SUPPLY))
            .line("low way", "split", "low", quadratic(8 * LOW))
            .line("middle way", "split", "middle", quadratic(LOW), ball())
            .line("high way", "split", "high", ball(), quadratic(HIGH))
            .network();

    ValveSettings settings = balanced(network);

    assertEquals(Set.of(new PointName("low")), settings.favoured());
    assertEquals(settings.targetFraction(), share(settings, "middle"), 1e-7);
    assertEquals(settings.targetFraction(), share(settings, "high"), 1e-7);
    assertTrue(share(settings, "low") > settings.targetFraction());
  }

  @Test
  void gateThatClosesTooCoarselyStandsAsFarAsItGoesShortOfShut() {
    Network network =
        new Garden()
            .basin("reservoir", 100)
            .tee("split")
            .outlet("low", 1, 0.0001)
            .outlet("high", 60, 0.005)
            .line("supply", "reservoir", "split", quadratic(SUPPLY))
            .line("low way", "split", "low", valve(ValveTravel.GATE))
            .line("high way", "split", "high", quadratic(HIGH), valve(ValveTravel.GATE))
            .network();

    ValveSettings settings = balanced(network);

    assertEquals(Role.TOO_COARSE, set(settings, "low way").role());
    assertEquals(Set.of(new PointName("low")), settings.favoured());
    assertTrue(set(settings, "low way").sensitivityM3PerSPerDegree().isEmpty());
    assertFalse(set(settings, "low way").valve().isShut());
  }

  @Test
  void valveThatFeedsNoTargetStaysAsItIs() {
    Network network =
        new Garden()
            .basin("reservoir", 10)
            .basin("pond", 0)
            .tee("split")
            .outlet("low", 1, LOW_TARGET)
            .line("supply", "reservoir", "split", quadratic(SUPPLY))
            .line("low way", "split", "low", quadratic(LOW), ball())
            .line("bypass", "split", "pond", quadratic(HIGH), ball())
            .network();

    ValveSettings settings = balanced(network);

    assertEquals(Role.LEFT_ALONE, set(settings, "bypass").role());
    assertEquals(45, set(settings, "bypass").valve().loss().degreesFromOpen().orElseThrow());
    assertEquals(Role.WIDE_OPEN, set(settings, "low way").role());
  }

  @Test
  void oneValveBeforeTwoFallsHoldsThePoorerOfThemToTheShare() {
    Network network =
        new Garden()
            .basin("reservoir", 10)
            .tee("split")
            .tee("below")
            .outlet("one", 1, LOW_TARGET)
            .outlet("two", 1.5, LOW_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "reservoir", "split", quadratic(SUPPLY))
            .line("low way", "split", "below", ball())
            .line("first", "below", "one", quadratic(LOW))
            .line("second", "below", "two", quadratic(LOW))
            .line("high way", "split", "high", ball(), quadratic(HIGH))
            .network();

    ValveSettings settings = balanced(network);

    assertEquals(settings.targetFraction(), share(settings, "two"), 1e-9);
    assertEquals(settings.targetFraction(), share(settings, "high"), 1e-9);
    assertEquals(Set.of(new PointName("one")), settings.favoured());
  }

  @Test
  void fallFedFromTwoSidesIsSetByBothItsValves() {
    Network network =
        new Garden()
            .basin("reservoir", 10)
            .tee("split")
            .outlet("low", 1, LOW_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "reservoir", "split", quadratic(SUPPLY))
            .line("left", "split", "low", quadratic(LOW), ball())
            .line("right", "split", "low", quadratic(2 * LOW), ball())
            .line("high way", "split", "high", ball(), quadratic(HIGH))
            .network();

    ValveSettings settings = balanced(network);

    assertEquals(settings.targetFraction(), share(settings, "low"), 1e-9);
    assertEquals(settings.targetFraction(), share(settings, "high"), 1e-9);
    assertEquals(Role.THROTTLED, set(settings, "left").role());
    assertEquals(Role.THROTTLED, set(settings, "right").role());
  }

  @Test
  void fallThatThePumpCannotReachMakesTheShareNothing() {
    Network network =
        new Garden()
            .basin("pond", 0)
            .tee("split")
            .outlet("low", 1, LOW_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "pond", "split", pump(5, 0.01), quadratic(SUPPLY))
            .line("low way", "split", "low", quadratic(LOW), ball())
            .line("high way", "split", "high", ball(), quadratic(HIGH))
            .network();

    ValveSettings settings = balanced(network);

    assertEquals(0, settings.targetFraction());
    assertEquals(new PointName("high"), settings.governing());
    assertEquals(Role.WIDE_OPEN, set(settings, "low way").role());
    assertTrue(settings.missingHeadM().orElseThrow() > 0);
  }

  @Test
  void drawOnTheWayIsLeftToItsTap() {
    Network network =
        new Garden()
            .basin("reservoir", 10)
            .tee("split")
            .tee("tap", 0.0015)
            .outlet("low", 1, LOW_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "reservoir", "split", quadratic(SUPPLY))
            .line("low way", "split", "tap", quadratic(LOW), ball())
            .line("rest", "tap", "low", quadratic(LOW))
            .line("high way", "split", "high", ball(), quadratic(HIGH))
            .network();

    ValveSettings settings = balanced(network);

    assertEquals(settings.targetFraction(), share(settings, "low"), 1e-9);
    assertEquals(settings.targetFraction(), share(settings, "high"), 1e-9);
  }

  @Test
  void sensitivityIsWhatADegreeTakesAway() {
    Network network =
        new Garden()
            .basin("reservoir", 10)
            .tee("split")
            .outlet("low", 1, LOW_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "reservoir", "split", quadratic(SUPPLY))
            .line("low way", "split", "low", quadratic(LOW), ball())
            .line("high way", "split", "high", ball(), quadratic(HIGH))
            .network();
    ValveSettings settings = balanced(network);
    SetValve low = set(settings, "low way");
    double open = low.valve().loss().opening().orElseThrow();
    Network further =
        low.place()
            .withLoss(
                settings.state().network(), new Valve.Opening(ValveTravel.BALL, open - 1 / 90.0));
    double before = settings.state().line(new LineName("low way")).flowM3PerS();
    double after = SteadyStateFinder.find(further).line(new LineName("low way")).flowM3PerS();

    assertEquals(
        before - after, low.sensitivityM3PerSPerDegree().orElseThrow(), 0.03 * (before - after));
  }

  @Test
  void targetAndValveAreAskedFor() {
    Network noTarget =
        new Garden()
            .basin("reservoir", 10)
            .outlet("low", 1, 0)
            .line("low way", "reservoir", "low", quadratic(LOW), ball())
            .network();

    assertThrows(IllegalArgumentException.class, () -> balanced(noTarget));
  }
}
