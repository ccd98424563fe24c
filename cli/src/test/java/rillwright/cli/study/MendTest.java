package rillwright.cli.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.condition.InCondition;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.study.mend.FirstRequest;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.MendRequest;
import rillwright.cli.study.mend.bound.Bound;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.cli.study.solve.SolveRequest;
import rillwright.solver.finding.Severity;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.stream.StreamBudgetFinder;
import rillwright.solver.stream.StreamPlan;

/** What is tried to mend the invented jobs of the examples. */
class MendTest {
  private static final double GALLON_PER_HOUR = 3.785411784e-3 / 3600;
  private static final MendRequest USUAL = new MendRequest(Offered.NOTHING, List.of(), 10);

  private static final String WIDEST = "lines.supply.pipe.size=8 in";

  private static Project example(String name, String... changes) {
    return ProjectReader.read(Path.of("..", "examples").resolve(name), List.of(changes));
  }

  @Test
  void aHandleThatCostsNothingIsFirst() {
    MendAnswer answer = USUAL.answer(example("twin-falls/ball-valves.yaml"));
    Remedy first = answer.remedies().get(0);
    assertTrue(first.mends());
    assertEquals(OptionalDouble.of(0), first.candidate().price());
    assertEquals(List.of(new PointName("high fall")), first.serves());
    assertEquals(List.of("lines.low.valve.open=72.2222222 %"), first.candidate().set());
  }

  /** A pump is not blamed for what a handle shuts off. */
  @Test
  void anotherPumpIsAskedForWithTheHandlesOpen() {
    String file = "twin-falls/ball-valves.yaml";
    MendAnswer shut = USUAL.answer(example(file, "lines.low.valve.open=20 %"));
    assertEquals(
        USUAL.answer(example(file)).duty().orElseThrow().duty(), shut.duty().orElseThrow().duty());
  }

  /** Speed and number of the pump that goes would stay where only the model is named. */
  @Test
  void aPumpInsteadBringsItsOwnSpeedAndNumber() {
    Project two =
        example(
            "twin-falls/falls.yaml", "lines.supply.pump.speed=80 %", "lines.supply.pump.count=2");
    PumpPlace place = PumpPlace.listChosen(two.network()).get(0);

    List<String> set = Pumps.instead(two.network(), place, "P-600", 100);

    assertEquals(
        List.of(
            "lines.supply.pump.model=P-600",
            "lines.supply.pump.speed=100 %",
            "lines.supply.pump.count=1"),
        set);
  }

  /** The widest pipe of the catalogue comes near it; 1,654 gph were found by hand before. */
  @Test
  void noPipeLiftsWhatTheLiftAloneTakes() {
    MendAnswer answer = USUAL.answer(example("small-pond/pond.yaml"));
    Bound friction =
        answer.bounds().stream()
            .filter(bound -> bound.kind() == Bound.Kind.PIPE_FRICTION)
            .findFirst()
            .orElseThrow();
    assertFalse(friction.enough());
    PointName fall = new PointName("fall");
    double most = friction.fallsM3PerS().get(fall);
    double wide =
        SteadyStateFinder.find(example("small-pond/pond.yaml", WIDEST).network())
            .point(fall)
            .outflowM3PerS();
    assertTrue(wide <= most);
    assertEquals(most, wide, 0.002 * most);
    assertEquals(1654, most / GALLON_PER_HOUR, 1);
  }

  /** A width of the crest makes no more water: it is named only where the target goes with it. */
  @Test
  void aCrestIsNoRemedyForAFlow() {
    MendAnswer answer =
        USUAL.answer(example("small-pond/pond.yaml", "points.fall.target=1800 gph"));
    assertTrue(
        answer.remedies().stream()
            .flatMap(remedy -> remedy.candidate().set().stream())
            .noneMatch(change -> change.startsWith("points.fall.width")));
  }

  @Test
  void twoTogetherMendWhatNoneAloneDoes() {
    MendAnswer answer =
        USUAL.answer(example("twin-falls/falls.yaml", "points.high fall.target=2400 gph"));
    assertFalse(answer.mendingAll().isEmpty());
    assertTrue(answer.mendingAll().stream().allMatch(it -> it.candidate().steps().size() > 1));
  }

  /** A valve that gives one missed fall its target and takes the other's water is not first. */
  @Test
  void whatMendsOneFallAtTheOthersCostIsAPart() {
    MendAnswer answer =
        USUAL.answer(example("twin-falls/ball-valves.yaml", "lines.supply.pump=P-180"));
    assertFalse(answer.mendingSome().isEmpty());
    for (Remedy remedy : answer.mendingAll()) {
      assertEquals(1, remedy.leastShare(), 0, remedy.candidate().toString());
    }
    assertTrue(answer.mendingAll().contains(answer.remedies().get(0)));
  }

  @Test
  void pumpsOfAFolderAreNamedForAnyCommand() {
    Project stream = example("long-stream/stream.yaml");
    Offered offered =
        new Offered(
            SheetFolder.read(Path.of("../examples/long-stream/supplier"), 998.2).sheets(),
            "supplier/");
    Remedy first = new MendRequest(offered, List.of(), 10).answer(stream).remedies().get(0);
    assertEquals("pumps.B-200=supplier/B-200.csv", first.candidate().set().get(0));
    assertTrue(first.mends());
  }

  /** A solved page is not to wait: what is tried for it is counted. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "twin-falls/falls.yaml",
        "twin-falls/ball-valves.yaml",
        "small-pond/pond.yaml",
        "long-stream/stream.yaml",
        "long-stream/dry.yaml",
        "header-pond/troughs.yaml",
        "fish-pond/pond.yaml"
      })
  void whatToDoFirstIsSoonFound(String name) {
    Project project = example(name);
    MendAnswer answer = new FirstRequest(new SolveRequest().answer(project)).answer(project);
    assertTrue(answer.tried() <= 12, answer.tried() + " for " + name);
  }

  /**
   * Of a stream that takes up its pond: what mends all feeds it at the levels that run, as {@code
   * stream} finds them, and adds no warning there.
   */
  @ParameterizedTest
  @CsvSource({"long-stream/dry.yaml, ''", "long-stream/stream.yaml, supplier"})
  void whatMendsAPondHoldsAtTheLevelsThatRun(String file, String supplier) {
    Project project = example(file);
    Offered offered =
        supplier.isEmpty()
            ? Offered.NOTHING
            : new Offered(
                SheetFolder.read(Path.of("../examples/long-stream", supplier), 998.2).sheets(),
                supplier + "/");
    MendAnswer answer = new MendRequest(offered, List.of(), 10).answer(project);
    assertTrue(answer.needs().stream().anyMatch(Need::isOfPond), answer.needs().toString());
    assertFalse(answer.mendingAll().isEmpty(), answer.remedies().toString());
    answer.remedies().forEach(MendTest::assertWithinBounds);
    Set<String> before = codes(project);
    for (Remedy remedy : answer.mendingAll()) {
      Project changed = project.with(remedy.candidate().set());
      String what = remedy.candidate().set().toString();
      SteadyState running = StreamBudgetFinder.find(changed.streams()).running().state();
      Targets targets = Targets.of(changed.network());
      assertTrue(targets.shareAt(targets.worstIn(running), running) >= 1, what);
      Set<String> added = codes(changed);
      added.removeAll(before);
      assertEquals(Set.of(), added, what);
    }
  }

  /** Problems and advice of a stream; how many days it lasts is asked for by --days alone. */
  private static Set<String> codes(Project project) {
    return StreamBudgetFinder.find(project.streams()).findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .filter(finding -> !finding.code().equals("starves-without-topping-up"))
        .map(finding -> finding.at() + " " + finding.code())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Of a pond of 15.8 m2: twice as large at most; 25 mm below the ground, which is at 75 mm. */
  private static void assertWithinBounds(Remedy remedy) {
    for (String change : remedy.candidate().set()) {
      double most =
          change.startsWith("points.pond.overflow")
              ? 50
              : change.startsWith("points.pond.shape") ? 31.6 : Double.POSITIVE_INFINITY;
      assertTrue(
          Double.isInfinite(most) || Double.parseDouble(change.replaceAll(".*=| .*", "")) <= most,
          change);
    }
  }

  @Test
  void aPondMustLastTheDaysThatAreAskedFor() {
    Project stream = example("long-stream/mended.yaml");
    double lasts =
        StreamBudgetFinder.find(stream.streams()).basins().get(0).daysToStarve().orElseThrow();
    for (double days : List.of(0.9 * lasts, 1.1 * lasts)) {
      MendRequest asked =
          new MendRequest(
              Offered.NOTHING, List.of(), 10, OptionalDouble.of(days), Optional.empty());
      MendAnswer answer = asked.answer(stream);
      boolean inNeed = answer.needs().stream().anyMatch(Need::isOfPond);
      assertEquals(days > lasts, inNeed, days + " of " + lasts + " days");
      assertTrue(!inNeed || !answer.mendingAll().isEmpty(), "nothing mends " + days + " days");
      for (Remedy remedy : inNeed ? answer.mendingAll() : List.<Remedy>of()) {
        StreamPlan with = stream.with(remedy.candidate().set()).streams();
        double now =
            StreamBudgetFinder.find(with).basins().get(0).daysToStarve().orElse(Double.MAX_VALUE);
        assertTrue(now >= days, remedy.candidate().set() + ": " + now + " days");
      }
    }
  }

  /** What mends in conditions gives every fall its target in each, as "solve" balances it. */
  @Test
  void inConditionsATargetIsMetInEachOfThem() {
    Project project = example("twin-falls/ball-valves.yaml", "lines.low.valve.open=72 %");
    assertTrue(USUAL.answer(project).needs().stream().allMatch(Need::isOfEfficiency));
    MendAnswer answer =
        new MendRequest(
                Offered.NOTHING, List.of(), 10, OptionalDouble.empty(), Optional.of(List.of()))
            .answer(project);
    assertTrue(answer.needs().stream().allMatch(need -> need.condition().isPresent()));
    assertFalse(answer.mendingAll().isEmpty());
    for (Remedy remedy : answer.mendingAll()) {
      Project changed = project.with(remedy.candidate().set());
      for (InCondition there : ProjectConditions.of(changed, List.of()).projects()) {
        SteadyState state = SteadyStateFinder.find(there.project().network());
        Targets targets = Targets.of(state.network());
        assertTrue(
            targets.shareAt(targets.worstIn(state), state) >= 1,
            there.condition().name() + " " + remedy.candidate());
      }
    }
  }

  /** Each class of change that was asked for is among what is tried. */
  @Test
  void aSecondLineAndOneMoreSkimmerAreTried() {
    MendAnswer answer =
        USUAL.answer(
            example(
                "small-pond/pond.yaml",
                "lines.intake.skimmer.sill=-1 in",
                "lines.supply.pump=P-180"));
    List<String> set =
        answer.remedies().stream().flatMap(it -> it.candidate().set().stream()).toList();
    assertTrue(set.contains("lines.intake.second line=yes"), set::toString);
    assertTrue(
        USUAL.answer(example("small-pond/pond.yaml")).remedies().stream()
            .flatMap(it -> it.candidate().set().stream())
            .anyMatch("lines.supply.second line=yes"::equals));
  }

  @Test
  void aPondGivenByItsSidesGrowsByThem() {
    Project dug =
        ProjectReader.read(Path.of("src/test/resources/rillwright/cli/mend/dug.yaml"), List.of());
    MendAnswer answer = USUAL.answer(dug);
    assertTrue(
        answer.remedies().stream()
            .flatMap(it -> it.candidate().set().stream())
            .anyMatch(change -> change.startsWith("points.pond.shape.length=")),
        answer.remedies().toString());
  }
}
