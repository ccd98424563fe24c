package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;

/** Thousands of random networks balance, and their balance holds by their laws alone. */
class RandomNetworksTest {
  private static final int SEEDS = 4000;

  /** Of ten thousand networks one needs more than 400 steps, all its starved chambers' together. */
  private static final int MOST_STEPS = 1500;

  private final List<String> faults = new ArrayList<>();
  private final List<Integer> steps = new ArrayList<>();
  private int withoutBalance;
  private int starved;
  private int shut;

  @Test
  void everyNetworkBalancesOrHasDrawsThatCannotBeMet(TestReporter reporter) {
    for (long seed = 0; seed < SEEDS; seed++) {
      Network network = RandomNetwork.of(seed);
      try {
        record(seed, SteadyStateFinder.find(network));
      } catch (NoBalance e) {
        withoutBalance++;
        recordClaim(seed, network, e);
      }
    }
    Collections.sort(steps);
    reporter.publishEntry(
        String.format(
            Locale.ROOT,
            "%d balanced, %d could not, %d starved, %d with a shut line; steps: half %d, 99 %% %d,"
                + " most %d",
            steps.size(),
            withoutBalance,
            starved,
            shut,
            steps.get(steps.size() / 2),
            steps.get(steps.size() * 99 / 100),
            steps.get(steps.size() - 1)));
    assertEquals(List.of(), faults);
    assertTrue(steps.get(steps.size() / 2) <= 15, "half take more than 15 steps");
    assertTrue(steps.get(steps.size() * 99 / 100) <= 80, "one in a hundred takes more than 80");
    assertTrue(steps.get(steps.size() - 1) <= MOST_STEPS, "one takes too many steps");
    assertTrue(starved > 50 && shut > 1000 && withoutBalance > 50, "the mix has lost its variety");
  }

  private void record(long seed, SteadyState state) {
    steps.add(state.iterations());
    starved += state.points().stream().anyMatch(PointState::isStarved) ? 1 : 0;
    shut += state.lines().stream().anyMatch(line -> !line.open()) ? 1 : 0;
    BalanceAudit.faults(state).forEach(fault -> faults.add("seed " + seed + ", " + fault));
    boolean levelsKnown =
        state.points().stream()
            .allMatch(point -> !(point.point() instanceof Chamber) || point.isDetermined());
    boolean draws = state.network().points().stream().anyMatch(point -> point.drawM3PerS() != 0);
    if (draws && levelsKnown && DrawsAudit.unmetShare(state.network()) > 1e-8) {
      faults.add("seed " + seed + ": balanced though its draws cannot be met");
    }
  }

  /**
   * Either no directions and greatest flows allow the draws, or what would meet them does not come
   * over a high point, or, high points aside, chambers could only meet them from below their
   * intakes.
   */
  private void recordClaim(long seed, Network network, NoBalance claim) {
    NoBalance.UnmetDraws unmet = (NoBalance.UnmetDraws) claim.reason();
    boolean named =
        unmet.draws().stream()
            .allMatch(draw -> draw.drawM3PerS() == network.point(draw.point()).drawM3PerS());
    boolean justified =
        DrawsAudit.unmetShare(network) > 0
            || balances(withoutHighPoints(network))
            || someChamberWouldFallBelowItsIntake(withoutHighPoints(network));
    if (!named || !justified) {
      faults.add("seed " + seed + ": " + claim.getMessage());
    }
  }

  private static Network withoutHighPoints(Network network) {
    Network level = network;
    for (Line line : network.lines()) {
      level =
          level.withLine(
              line.withParts(
                  line.parts().stream().filter(part -> !(part instanceof HighPoint)).toList()));
    }
    return level;
  }

  private static boolean balances(Network network) {
    try {
      return SteadyStateFinder.find(network).iterations() > 0;
    } catch (NoBalance anyway) {
      return false;
    }
  }

  private static boolean someChamberWouldFallBelowItsIntake(Network network) {
    List<Point> deep = new ArrayList<>();
    for (Point point : network.points()) {
      deep.add(point instanceof Chamber chamber ? bottomless(chamber) : point);
    }
    SteadyState state =
        SteadyStateFinder.find(
            new Network(network.water(), network.siteElevationM(), deep, network.lines()));
    return network.points().stream()
        .filter(Chamber.class::isInstance)
        .map(Chamber.class::cast)
        .anyMatch(
            chamber -> state.point(chamber.name()).headM().orElse(Double.NaN) < chamber.intakeM());
  }

  private static Chamber bottomless(Chamber chamber) {
    OptionalDouble unknown = OptionalDouble.empty();
    return new Chamber(chamber.name(), -1e300, -1e300, unknown, unknown);
  }
}
