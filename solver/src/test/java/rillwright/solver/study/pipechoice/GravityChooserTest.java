package rillwright.solver.study.pipechoice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.pipechoice.PipeOption.Size;
import rillwright.solver.trial.PlainNetworks;
import rillwright.solver.trial.SiteState;

/**
 * A pond at 0 m, a loss of c Q² and an outlet 2 m below it: Q = √(2/c) by hand. the target is 2
 * L/s: c = 5e5 gives just that.
 */
class GravityChooserTest {
  private static final LineName SUPPLY = new LineName("supply");

  private static PipeOption option(String size, double boreM, double c, double cost) {
    return option(size, boreM, PlainNetworks.downhill(c), List.of(), OptionalDouble.of(cost));
  }

  private static PipeOption option(
      String size, double boreM, Network network, List<SiteState> states, OptionalDouble cost) {
    return new PipeOption(Map.of(SUPPLY, new Size(size, boreM)), network, states, cost);
  }

  private static String size(GravityPipe pipe) {
    return pipe.option().sizes().get(SUPPLY).name();
  }

  @ParameterizedTest(name = "c = {0}: {1}, just short {2}, far too much {3}")
  @CsvSource({
    "5.0e5, true, false, false",
    "5.2e5, true, true, false",
    "5.6e5, false, false, false",
    "3.3e5, true, false, false",
    "3.1e5, true, false, true",
  })
  void flowIsTheClosedFormAndJudgedByTheTarget(
      double c, boolean meetsTargets, boolean justShort, boolean farTooMuch) {
    GravityPipe pipe =
        GravityChooser.choose(List.of(option("any", 0.05, c, 100)), Progress.UNSEEN)
            .ranked()
            .get(0);

    double flow = Math.sqrt(2 / c);
    assertEquals(flow, pipe.state().line(SUPPLY).flowM3PerS(), 1e-12);
    assertEquals(flow / 0.002, pipe.run().asItStands().leastFraction(), 1e-9);
    assertEquals(meetsTargets, pipe.meetsTargets());
    assertEquals(justShort, pipe.run().isJustShort());
    assertEquals(farTooMuch, pipe.run().throttled().isPresent());
  }

  /**
   * A trunk of 2e5 Q² feeds two outlets 2 m below, near by 1e4 Q² and far by 1.25e6 Q²: near takes
   * the more and leaves far short of its 1 L/s. Near held to its 1 L/s, far gets Q with 2 = 2e5 (Q
   * + 0.001)² + 1.25e6 Q².
   */
  @Test
  void fallThatTakesTooMuchIsHeldToItsTargetForTheOther() {
    Network network = PlainNetworks.fork(2e5, 1e4, 1.25e6);
    PipeOption option = option("any", 0.05, network, List.of(), OptionalDouble.empty());

    GravityRun run = GravityChooser.choose(List.of(option), Progress.UNSEEN).ranked().get(0).run();

    double far = root(2e5, 1.25e6, 0.001);
    assertTrue(run.asItStands().leastFraction() < 0.95, "" + run.asItStands().leastFraction());
    assertTrue(run.meetsTargets());
    assertEquals(far, run.inUse().state().line(new LineName("far")).flowM3PerS(), 1e-12);
    assertEquals(0.001, run.inUse().state().line(new LineName("near")).flowM3PerS(), 1e-12);
  }

  /** Q of 2 = trunk (Q + held)² + way Q². */
  private static double root(double trunk, double way, double held) {
    double a = trunk + way;
    double b = 2 * trunk * held;
    double c = trunk * held * held - 2;
    return (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
  }

  @Test
  void cheapestThatMeetsTheTargetsComesFirstAndOfTheOthersTheNearest() {
    RankedPipes<GravityPipe> choice =
        GravityChooser.choose(
            List.of(
                option("tiny", 0.02, 5e6, 50),
                option("small", 0.03, 1e6, 80),
                option("large", 0.08, 1e5, 300),
                option("middle", 0.05, 4e5, 200)),
            Progress.UNSEEN);

    assertEquals(
        List.of("middle", "large", "small", "tiny"),
        choice.ranked().stream().map(GravityChooserTest::size).toList());
    GravityPipe least = choice.leastCost().orElseThrow();
    assertEquals("middle", size(least));
    assertEquals("large", size(choice.runnerUp().orElseThrow()));
    assertEquals("large", size(choice.nextSizesUp(least).get(0)));
  }

  @Test
  void withoutPricesTheNarrowestThatMeetsTheTargetsComesFirst() {
    RankedPipes<GravityPipe> choice =
        GravityChooser.choose(
            List.of(
                option(
                    "large", 0.08, PlainNetworks.downhill(1e5), List.of(), OptionalDouble.empty()),
                option(
                    "middle",
                    0.05,
                    PlainNetworks.downhill(4e5),
                    List.of(),
                    OptionalDouble.empty())),
            Progress.UNSEEN);

    assertEquals("middle", size(choice.leastCost().orElseThrow()));
  }

  @Test
  void worstConditionJudges() {
    List<SiteState> states =
        List.of(
            new SiteState("clean", PlainNetworks.downhill(4e5)),
            new SiteState("fouled", PlainNetworks.downhill(8e5)));
    PipeOption option =
        option("any", 0.05, PlainNetworks.downhill(4e5), states, OptionalDouble.empty());

    GravityPipe pipe = GravityChooser.choose(List.of(option), Progress.UNSEEN).ranked().get(0);

    assertTrue(pipe.run().meetsTargets());
    assertFalse(pipe.meetsTargets());
    assertEquals("fouled", pipe.worstCondition().orElseThrow().name());
    assertEquals(
        Math.sqrt(2 / 8e5) / 0.002, pipe.worstCondition().orElseThrow().leastFraction(), 1e-9);
  }
}
