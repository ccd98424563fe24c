package rillwright.solver.study.valvesetting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.study.valvesetting.Garden.BORE;
import static rillwright.solver.study.valvesetting.Garden.balanced;
import static rillwright.solver.study.valvesetting.Garden.pump;
import static rillwright.solver.study.valvesetting.Garden.quadratic;
import static rillwright.solver.study.valvesetting.Garden.set;
import static rillwright.solver.study.valvesetting.Garden.share;
import static rillwright.solver.study.valvesetting.Garden.targeted;
import static rillwright.solver.study.valvesetting.Garden.valve;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.study.valvesetting.SetValve.Role;

class ValveSettingFinderTest {
  private static final double LOW_TARGET = 0.002;
  private static final double HIGH_TARGET = 0.001;
  private static final double SUPPLY = 100_000;
  private static final double LOW = 50_000;
  private static final double HIGH = 400_000;
  private static final double K_OPEN = 0.5;

  /** Head of K velocity heads at a flow, m: the definition. */
  private static double kLoss(double k, double flow) {
    double velocity = flow / (Math.PI / 4 * BORE.diameterM() * BORE.diameterM());
    return k * velocity * velocity / (2 * Gravity.STANDARD_M_PER_S2);
  }

  /** Water from a reservoir 10 m up to two outlets, one at 1 m, one at 6 m; quadratic losses. */
  private static Garden twoOutlets() {
    return new Garden()
        .basin("reservoir", 10)
        .tee("split")
        .outlet("low", 1, LOW_TARGET)
        .outlet("high", 6, HIGH_TARGET)
        .line("supply", "reservoir", "split", quadratic(SUPPLY))
        .line("low way", "split", "low", quadratic(LOW), valve(K_OPEN))
        .line("high way", "split", "high", valve(K_OPEN), quadratic(HIGH));
  }

  /**
   * By hand: with the high way wide open 10 − 6 = SUPPLY (s ΣW)² + HIGH (s W)² + K V²/2g, which
   * gives the share s; the head left at the tee over the low outlet gives the other valve's K.
   */
  @Test
  void twoOutletsOffAReservoirAreAsWorkedByHand() {
    double sum = LOW_TARGET + HIGH_TARGET;
    double openLoss = kLoss(K_OPEN, 1);
    double s = Math.sqrt(4 / (SUPPLY * sum * sum + (HIGH + openLoss) * HIGH_TARGET * HIGH_TARGET));
    double atTee = 10 - SUPPLY * Math.pow(s * sum, 2);
    double taken = atTee - 1 - LOW * Math.pow(s * LOW_TARGET, 2);
    double k = taken / kLoss(1, s * LOW_TARGET);

    ValveSettings settings = balanced(twoOutlets().network());

    assertEquals(s, settings.targetFraction(), 1e-9 * s);
    assertEquals(k, set(settings, "low way").lossCoefficient().orElseThrow(), 1e-6 * k);
    assertEquals(K_OPEN, set(settings, "high way").lossCoefficient().orElseThrow());
    assertEquals(new PointName("high"), settings.governing());
    assertEquals(Role.WIDE_OPEN, set(settings, "high way").role());
    assertEquals(List.of(new LineName("low way"), new LineName("high way")), settings.order());
    assertEquals(Set.of(), settings.favoured());
  }

  /** By hand: as above with s = 1; the high valve takes what is too much at the tee too. */
  @Test
  void targetIsMetExactlyWhereThereIsHeadEnough() {
    double sum = LOW_TARGET + HIGH_TARGET;
    double atTee = 10 - SUPPLY * sum * sum;
    double kLow = (atTee - 1 - LOW * LOW_TARGET * LOW_TARGET) / kLoss(1, LOW_TARGET);
    double kHigh = (atTee - 6 - HIGH * HIGH_TARGET * HIGH_TARGET) / kLoss(1, HIGH_TARGET);

    ValveSettings settings = targeted(twoOutlets().network());

    assertEquals(1, settings.targetFraction(), 1e-9);
    assertEquals(1, share(settings, "low"), 1e-9);
    assertEquals(kLow, set(settings, "low way").lossCoefficient().orElseThrow(), 1e-6 * kLow);
    assertEquals(kHigh, set(settings, "high way").lossCoefficient().orElseThrow(), 1e-6 * kHigh);
  }

  @Test
  void valveBeforeTheTeeTakesWhatIsTooMuchForAllAndTheGoverningWayStaysOpen() {
    Garden garden =
        new Garden()
            .basin("reservoir", 10)
            .tee("split")
            .outlet("low", 1, LOW_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "reservoir", "split", quadratic(SUPPLY), valve(K_OPEN))
            .line("low way", "split", "low", quadratic(LOW), valve(K_OPEN))
            .line("high way", "split", "high", valve(K_OPEN), quadratic(HIGH));

    ValveSettings settings = targeted(garden.network());

    assertEquals(1, share(settings, "low"), 1e-9);
    assertEquals(1, share(settings, "high"), 1e-9);
    assertEquals(Role.WIDE_OPEN, set(settings, "high way").role());
    assertEquals(Role.THROTTLED, set(settings, "supply").role());
    assertEquals(
        Role.WIDE_OPEN, set(balanced(garden.network()), "supply").role(), "without --target");
  }

  /**
   * By hand: the pump gives 4 − 1000 Q; at the sum of the targets 4 − 3 = 1 m. The high outlet asks
   * for 6 m, the supply's loss, its own and the open valve's.
   */
  @Test
  void pumpShortIsTheHeadThatIsMissingAtTheSumOfTheTargets() {
    double sum = LOW_TARGET + HIGH_TARGET;
    double asked =
        6 + SUPPLY * sum * sum + HIGH * HIGH_TARGET * HIGH_TARGET + kLoss(K_OPEN, HIGH_TARGET);
    Network network =
        new Garden()
            .basin("pond", 0)
            .tee("split")
            .outlet("low", 1, LOW_TARGET)
            .outlet("high", 6, HIGH_TARGET)
            .line("supply", "pond", "split", pump(7, 0.0035), quadratic(SUPPLY))
            .line("low way", "split", "low", quadratic(LOW), valve(K_OPEN))
            .line("high way", "split", "high", valve(K_OPEN), quadratic(HIGH))
            .network();
    double given = 7 - 7 / 0.0035 * sum;

    ValveSettings settings = balanced(network);

    assertTrue(
        settings.targetFraction() < 1 && settings.targetFraction() > 0,
        () -> "" + settings.targetFraction());
    assertEquals(settings.targetFraction(), share(settings, "low"), 1e-9);
    assertEquals(asked - given, settings.missingHeadM().orElseThrow(), 1e-8);
    assertEquals(0, balanced(twoOutlets().network()).missingHeadM().orElseThrow());
  }
}
