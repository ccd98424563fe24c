package rillwright.solver.study.valvesetting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.study.valvesetting.Garden.balanced;
import static rillwright.solver.study.valvesetting.Garden.pump;
import static rillwright.solver.study.valvesetting.Garden.quadratic;
import static rillwright.solver.study.valvesetting.Garden.targeted;
import static rillwright.solver.study.valvesetting.Garden.valve;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.valvesetting.SetValve.Role;

/** Seeded gardens of two to five falls on trees and loops, each fall with a valve of its own. */
class RandomGardensTest {
  private static final double OPEN = 0.3;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 30);
  }

  private static Network garden(SplittableRandom random) {
    Garden garden = new Garden().basin("pond", 0).tee("tee 0");
    garden.line(
        "supply",
        "pond",
        "tee 0",
        pump(random.nextDouble(5, 12), random.nextDouble(0.004, 0.012)),
        quadratic(random.nextDouble(1e3, 1e5)));
    int falls = random.nextInt(2, 6);
    for (int i = 1; i <= falls; i++) {
      String before = "tee " + random.nextInt(i);
      garden.tee("tee " + i);
      garden.line("main " + i, before, "tee " + i, quadratic(random.nextDouble(1e3, 1e5)));
      garden.fall("fall " + i, random.nextDouble(0.3, 4), random.nextDouble(5e-4, 3e-3));
      garden.line(
          "way " + i, "tee " + i, "fall " + i, quadratic(random.nextDouble(1e3, 3e5)), valve(OPEN));
    }
    if (random.nextBoolean()) { // a ring
      garden.line("ring", "tee 0", "tee " + falls, quadratic(random.nextDouble(1e3, 1e5)));
    }
    return garden.network();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void allFallsGetTheSameShareAndTheGoverningWayIsOpen(long seed) {
    ValveSettings settings = balanced(garden(new SplittableRandom(seed)));

    SteadyState state = settings.state();
    for (PointName fall : Targets.of(state.network()).falls()) {
      double share = Garden.share(settings, fall.value());
      assertEquals(
          settings.targetFraction(),
          share,
          1e-6 * settings.targetFraction(),
          () -> fall + ", seed " + seed);
    }
    String way = settings.governing().value().replace("fall", "way");
    assertEquals(Role.WIDE_OPEN, Garden.set(settings, way).role(), () -> "seed " + seed);
    assertEquals(OPEN, Garden.set(settings, way).lossCoefficient().orElseThrow());
  }

  /** Whatever else is done with the valves, some fall gets less than the share. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void noOtherSettingGivesEveryFallMore(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    ValveSettings settings = balanced(garden(random));
    Network set = settings.state().network();
    Targets targets = Targets.of(set);
    for (int i = 0; i < 20; i++) {
      Network other = set;
      double reach = Math.pow(10, -3 * random.nextDouble());
      for (SetValve valve : settings.valves()) {
        double factor = Math.exp(reach * random.nextDouble(-2, 2));
        double k = Math.max(OPEN, valve.lossCoefficient().orElseThrow() * factor);
        other = valve.place().withLoss(other, valve.valve().loss().closedTo(k));
      }
      SteadyState state = SteadyStateFinder.find(other);
      double worst = targets.shareAt(targets.worstIn(state), state);
      assertTrue(worst <= settings.targetFraction() * (1 + 1e-9), () -> worst + ", seed " + seed);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void targetIsGivenExactlyOrTheLargestShare(long seed) {
    Network network = garden(new SplittableRandom(seed));
    double largest = balanced(network).targetFraction();
    ValveSettings settings = targeted(network);
    for (PointName fall : Targets.of(network).falls()) {
      assertEquals(
          Math.min(1, largest),
          Garden.share(settings, fall.value()),
          1e-6,
          () -> fall + ", seed " + seed);
    }
    assertEquals(largest < 1, settings.missingHeadM().orElseThrow() > 0);
  }
}
