package rillwright.solver.stream.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.BasinShape;
import rillwright.solver.stream.RunningWater;
import rillwright.solver.stream.Slope;
import rillwright.solver.stream.Step;
import rillwright.solver.stream.StreamBudget;
import rillwright.solver.stream.StreamBudgetFinder;
import rillwright.solver.stream.time.TimeCourse.Moment;

class StartAndStopTest {

  static Stream<Arguments> plans() {
    return Stream.of(
        Arguments.of("plain", new Slope()),
        Arguments.of("without a check valve", new Slope().withoutCheckValve().box(0.15)),
        Arguments.of("starved", new Slope().sill(-0.05)),
        Arguments.of(
            "over a shelf",
            new Slope()
                .shape(
                    new BasinShape(
                        List.of(
                            new BasinShape.Row(-0.9, 6),
                            new BasinShape.Row(-0.012, 8),
                            new BasinShape.Row(-0.012, 13),
                            new BasinShape.Row(0.2, 14))))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void waterIsKeptAndTheLevelsAreThoseOfTheBudget(String name, Slope slope) {
    StreamBudget budget = StreamBudgetFinder.find(slope.plan());
    TimeCourse course = StartAndStop.of(budget.running());

    assertTrue(
        course.volumeErrorM3() <= 1e-9 * course.volumeM3(),
        () -> course.volumeErrorM3() + " of " + course.volumeM3());
    Moment steady = course.steady();
    Moment last = course.last();
    double flow = budget.running().streams().get(0).flowM3PerS();
    assertEquals(
        budget.basins().get(0).runningLevelM().orElseThrow(),
        steady.levelM().get(Slope.POND),
        3e-4);
    assertEquals(flow, steady.flowM3PerS().get(Slope.FALL), 0.01 * flow);
    assertEquals(flow, steady.returnFlowM3PerS().get("main"), 0.01 * flow);
    assertEquals(0, last.levelM().get(Slope.POND), 1e-3);
    assertTrue(course.firstReturnS().isPresent());
  }

  /**
   * The pond stands 20 mm above its overflow: that runs away, and in the end the pond and its
   * chamber hold just so much less. No water is lost by it: what overflowed is counted.
   */
  @Test
  void whatStandsAboveTheOverflowRunsAwayAndIsCounted() {
    StreamBudget budget = StreamBudgetFinder.find(new Slope().overflow(-0.02).plan());
    TimeCourse course = StartAndStop.of(budget.running());

    double pond = course.last().levelM().get(Slope.POND);
    double chamber = course.last().levelM().get(Slope.CHAMBER);
    assertTrue(course.ranOverM3() > 0.1, () -> "" + course.ranOverM3());
    assertTrue(pond < -0.015, () -> "" + pond);
    assertTrue(
        Slope.POND_AREA_M2 * -pond - 0.3 * chamber >= course.ranOverM3() - 1e-9,
        () -> pond + " " + chamber + " " + course.ranOverM3());
    assertTrue(course.volumeErrorM3() <= 1e-9 * course.volumeM3());
  }

  /** A starved chamber of any size rests at its intake and lets on what the skimmer passes. */
  @ParameterizedTest(name = "{0} m²")
  @ValueSource(doubles = {0.03, 0.1, 0.3})
  void starvedChamberRestsAtItsIntake(double areaM2) {
    StreamBudget budget =
        StreamBudgetFinder.find(new Slope().sill(-0.05).chamberArea(areaM2).plan());
    Moment steady = StartAndStop.of(budget.running()).steady();

    double flow = budget.running().streams().get(0).flowM3PerS();
    assertEquals(-0.4, steady.levelM().get(Slope.CHAMBER), 5e-4);
    assertEquals(flow, steady.flowM3PerS().get(Slope.FALL), 0.02 * flow);
  }

  @Test
  void watersSoSmallThatTheyRaceAreGivenUpInSeconds() {
    RunningWater running =
        StreamBudgetFinder.find(new Slope().chamberArea(1e-6).items(new Step(2, 0.5)).plan())
            .running();

    TimeCourse course = StartAndStop.of(running);
    assertEquals(Slope.CHAMBER, course.givenUp().orElseThrow().water());
    assertEquals(course.last().timeS(), course.givenUp().orElseThrow().timeS());
    assertTrue(course.volumeErrorM3() < 1e-6);
  }

  @Test
  void steadyMeansThatTheStreamRunsFull() {
    Slope large = new Slope().shape(new BasinShape(List.of(new BasinShape.Row(0, 1e4))));
    Moment steady = StartAndStop.of(StreamBudgetFinder.find(large.plan()).running()).steady();

    double over = steady.flowM3PerS().get(Slope.FALL);
    assertEquals(over, steady.returnFlowM3PerS().get("main"), 0.011 * over);
  }

  @Test
  void nothingRunsOverBelowTheBrim() {
    TimeCourse course = StartAndStop.of(StreamBudgetFinder.find(new Slope().plan()).running());

    assertEquals(0, course.ranOverM3());
  }

  /** A pipe that must fill first keeps the fall dry, and a dry fall is reported too. */
  @Test
  void fallIsReportedWhileThePipeBeforeItFills() {
    TimeCourse course =
        StartAndStop.of(StreamBudgetFinder.find(new Slope().withoutCheckValve().plan()).running());

    assertEquals(0, course.moments().get(0).flowM3PerS().get(Slope.FALL));
    assertTrue(course.moments().stream().allMatch(it -> it.flowM3PerS().containsKey(Slope.FALL)));
  }

  /**
   * Closed form of a tank with upright walls that drains over a weir, A dh/dt = −C b h^1.5: h =
   * (h₀^−½ + C b t / 2A)^−2. So the box of the fall drains when the pump stops.
   */
  @Test
  void boxDrainsAsTheClosedFormSays() {
    double area = 0.15;
    double cb = 2.0 / 3 * 0.6 * 0.6 * Math.sqrt(2 * Gravity.STANDARD_M_PER_S2);
    TimeCourse course =
        StartAndStop.of(StreamBudgetFinder.find(new Slope().box(area).plan()).running());
    double start = Math.pow(course.steady().flowM3PerS().get(Slope.FALL) / cb, 2.0 / 3);
    int compared = 0;
    for (Moment moment : course.moments()) {
      double time = moment.timeS() - course.stopsAtS();
      if (!moment.pumping() && time < 600) {
        double head = Math.pow(1 / Math.sqrt(start) + cb * time / (2 * area), -2);
        double flow = cb * head * Math.sqrt(head);
        assertEquals(flow, moment.flowM3PerS().get(Slope.FALL), 1e-7 * flow + 1e-11);
        compared++;
      }
    }
    assertTrue(compared > 20);
  }
}
