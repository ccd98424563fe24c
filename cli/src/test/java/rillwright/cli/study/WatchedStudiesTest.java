package rillwright.cli.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.study.balance.BalanceRequest;
import rillwright.cli.study.choice.GravityRequest;
import rillwright.cli.study.choice.PipesRequest;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.condition.InConditions;
import rillwright.cli.study.curve.CurvesRequest;
import rillwright.cli.study.duty.DutyRequest;
import rillwright.cli.study.odds.OddsRequest;
import rillwright.cli.study.solve.SolveRequest;
import rillwright.cli.study.solve.Solved;
import rillwright.cli.study.stream.StreamRequest;
import rillwright.cli.study.stream.StreamRequest.Follow;
import rillwright.cli.study.weak.CausesRequest;
import rillwright.cli.study.weak.WeakRequest;
import rillwright.solver.network.LineName;
import rillwright.solver.progress.Stopped;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.NoBalance.UnmetDraws;
import rillwright.solver.study.pipechoice.PipeOption.Size;
import rillwright.solver.study.uncertainty.SamplingPlan;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;

/** Long studies tell how far they have come and can be stopped; what does not fit is refused. */
class WatchedStudiesTest {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final PumpPlace SUPPLY = new PumpPlace(new LineName("supply"), 0);
  private static final SheetFolder SHEETS =
      SheetFolder.read(EXAMPLES.resolve("twin-falls/pumps"), 998.2);
  private static final OddsRequest ODDS = new OddsRequest(new SamplingPlan(200, 1, 2));

  private static Project example(String path) {
    return ProjectReader.read(EXAMPLES.resolve(path), List.of());
  }

  private static List<SizeOption> sizes(String line) {
    return Stream.of("2 in", "3 in")
        .map(
            size ->
                new SizeOption(
                    Map.of(new LineName(line), new Size(size, 0.05)),
                    List.of("lines." + line + ".pipe.size=" + size)))
        .toList();
  }

  /**
   * A long request, an example to ask and how many pieces of work that is, 0 if it is not known.
   */
  static Stream<Arguments> longRequests() {
    return Stream.of(
        Arguments.of(PumpsRequest.usual(SUPPLY, SHEETS), "twin-falls/falls.yaml", 3),
        Arguments.of(
            new PipesRequest(SUPPLY, sizes("supply"), Optional.of(SHEETS), 1, 10, Optional.empty()),
            "twin-falls/falls.yaml",
            2 * 3),
        Arguments.of(
            new GravityRequest(sizes("main"), 10, Optional.empty()), "header-pond/troughs.yaml", 2),
        Arguments.of(ODDS, "old-falls/falls.yaml", 200),
        Arguments.of(
            new InConditions<>(ODDS, List.of("autumn", "cold water")),
            "old-falls/falls.yaml",
            2 * 200),
        Arguments.of(WeakRequest.usual(), "weak-fall/fall.yaml", 0),
        Arguments.of(new StreamRequest(Follow.START_AND_STOP), "long-stream/stream.yaml", 0));
  }

  @ParameterizedTest
  @MethodSource("longRequests")
  void progressIsReportedInOrder(Request<?> request, String example, int pieces) {
    List<Integer> shown = new ArrayList<>();
    List<Integer> all = new ArrayList<>();
    request.answer(
        example(example),
        (done, of) -> {
          all.add(of);
          return shown.add(done);
        });
    assertEquals(shown.stream().sorted().distinct().toList(), shown);
    assertEquals(1, all.stream().distinct().count(), "one count of all");
    assertTrue(shown.size() > 1 && shown.get(shown.size() - 1) <= all.get(0), "" + shown.size());
    if (pieces > 0) {
      assertEquals(pieces, all.get(0));
      assertEquals(pieces, shown.get(shown.size() - 1));
    }
  }

  @ParameterizedTest
  @MethodSource("longRequests")
  void whoWatchesMayStopIt(Request<?> request, String example, int pieces) {
    Project project = example(example);
    List<Integer> shown = new ArrayList<>();
    assertThrows(
        Stopped.class,
        () ->
            request.answer(
                project,
                (done, all) -> {
                  shown.add(done);
                  return false;
                }),
        () -> "of " + pieces);
    assertEquals(1, shown.size(), "it is not asked again");
  }

  static Stream<Request<?>> withAllPumpsChosen() {
    return Stream.of(
        new SolveRequest(),
        new BalanceRequest(List.of(), Aim.TARGET),
        new StreamRequest(Follow.NO),
        ODDS,
        WeakRequest.usual(),
        new CausesRequest(Optional.empty()),
        new DutyRequest(new PumpPlace(new LineName("low"), 0)),
        new CurvesRequest(new PumpPlace(new LineName("low"), 0)),
        PumpsRequest.usual(new PumpPlace(new LineName("low"), 0), SHEETS),
        new GravityRequest(sizes("low"), 10, Optional.empty()));
  }

  @ParameterizedTest
  @MethodSource("withAllPumpsChosen")
  void anotherPumpThatIsToBeChosenIsRefused(Request<?> request) {
    Project planned =
        example("twin-falls/falls.yaml").with(List.of("lines.supply.pump=to be chosen"));
    assertEquals(
        "the pump in line \"supply\" is still to be chosen",
        assertThrows(IllegalArgumentException.class, () -> request.answer(planned)).getMessage());
  }

  @Test
  void thePumpThatIsAskedForMayBeToBeChosen() {
    Project planned =
        example("twin-falls/falls.yaml").with(List.of("lines.supply.pump=to be chosen"));
    assertTrue(new DutyRequest(SUPPLY).answer(planned).duty().throttled().isPresent());
  }

  @Test
  void aConditionWithoutBalanceIsACaseThatSaysWhy() {
    Project project =
        example("old-falls/falls.yaml")
            .with(List.of("points.split.draw=90000 gph", "title=With a draw"));
    Cases<Solved> cases =
        new InConditions<>(new SolveRequest(), List.of("as written", "autumn")).answer(project);
    assertEquals("With a draw", cases.title());
    assertEquals(2, cases.cases().size());
    for (Case<Solved> one : cases.cases()) {
      assertTrue(one.answer().isEmpty() && one.noBalance().orElseThrow() instanceof UnmetDraws);
    }
  }
}
