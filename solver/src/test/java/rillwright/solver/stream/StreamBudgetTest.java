package rillwright.solver.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.finding.Finding;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.BasinShape.Row;
import rillwright.solver.network.TerracedPond;

class StreamBudgetTest {
  private static final double DAY_S = 86400;
  private static final TerracedPond.Shelf SHELF = new TerracedPond.Shelf(0.5, 0.3);

  private static List<String> codes(StreamBudget budget) {
    return budget.findings().stream().map(Finding::code).toList();
  }

  /** By hand: 25 m of 60 mm pipe from the chamber's intake at −0.4 m to the crest at 2 m. */
  private static final double PIPE_ABOVE_POND_M3 = Math.PI / 4 * 0.06 * 0.06 * 25 * (2 / 2.4);

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void noWaterIsLostBetweenRestAndRunning(boolean shelves) {
    Slope slope = new Slope().box(0.2);
    if (shelves) {
      slope.shape(
          new BasinShape(
              List.of(
                  new BasinShape.Row(-0.9, 2),
                  new BasinShape.Row(-0.04, 6),
                  new BasinShape.Row(-0.04, 14),
                  new BasinShape.Row(0.2, 15))));
    }
    StreamBudget budget = StreamBudgetFinder.find(slope.plan());
    LevelBudget pond = budget.basins().get(0);
    RunningWater running = budget.running();
    BasinShape shape = pond.basin().shape().orElseThrow();
    double level = pond.runningLevelM().orElseThrow();
    double chamber = running.state().point(Slope.CHAMBER).headM().orElseThrow();

    double given = shape.volumeM3(0) - shape.volumeM3(level) + 0.3 * (0 - chamber);

    assertEquals(running.transit().totalM3(), given, 1e-9);
    assertTrue(level < 0 && chamber < level);
    assertTrue(running.transit().boxesM3() > 0 && running.transit().gravelM3() > 0);
    assertEquals(0, running.transit().pipesM3());
  }

  @Test
  void itemsAddUpToWhatIsInTransit() {
    RunningWater running = StreamBudgetFinder.find(new Slope().plan()).running();
    StreamState stream = running.streams().get(0);
    ItemState reach = stream.items().get(0);
    ItemState pool = stream.items().get(1);
    double flow = stream.flowM3PerS();

    assertEquals(reach.volumeM3(), running.transit().streamsM3());
    assertEquals((0.4 + reach.depthM()) * reach.depthM() * 12, reach.volumeM3(), 1e-12);
    assertEquals(0.4 * 12 * 0.08 * 0.4 * 0.5, reach.gravelM3(), 1e-12);
    // the pool's weir by hand: Q = 2/3 · 0.6 · 0.5 · √(2g) · h^1.5
    double head = Math.pow(flow / (0.2 * Math.sqrt(2 * 9.80665)), 2.0 / 3);
    assertEquals(1.5 * head, pool.volumeM3(), 1e-12);
    assertEquals(0.3 + head, pool.depthM(), 1e-12);
    assertTrue(reach.leastVolumeM3() < reach.volumeM3());
    assertTrue(reach.mostVolumeM3() > reach.volumeM3());
  }

  @Test
  void pipeWithoutACheckValveDrainsDownToThePond() {
    RunningWater running =
        StreamBudgetFinder.find(new Slope().withoutCheckValve().plan()).running();
    assertEquals(PIPE_ABOVE_POND_M3, running.transit().pipesM3(), 1e-12);
  }

  /** By hand, upright walls: days = room · A / (E (1 + splash) (A + A beside)). */
  @Test
  void daysToStarveAreAsWorkedByHand() {
    double rate = 0.006 / DAY_S;
    StreamBudget budget = StreamBudgetFinder.find(new Slope().loss(rate, 0.2).plan());
    LevelBudget pond = budget.basins().get(0);
    StreamState stream = budget.running().streams().get(0);
    // the skimmer by hand: Q = 2/3 · 0.36 · 0.4 · √(2g) · h^1.5 over the sill at −0.12 m
    double needs =
        Math.pow(stream.flowM3PerS() / (0.24 * 0.4 * Math.sqrt(2 * 9.80665)), 2.0 / 3) - 0.12;
    double beside = 12 * (0.4 + 2 * stream.items().get(0).depthM()) + 1.5;
    double room = pond.runningLevelM().orElseThrow() - needs;
    double perDay = 0.006 * 1.2 * (12 + beside) / 12;

    assertEquals(needs, pond.starveLevelM().orElseThrow(), 1e-12);
    assertEquals(perDay, pond.lossMPerDay().orElseThrow(), 1e-12);
    assertEquals(room / perDay, pond.daysToStarve().orElseThrow(), 1e-9);
  }

  /** By hand, upright walls: the pond rises by what comes back, less what fills the chamber. */
  @Test
  void stopRaisesAToppedUpPondByWhatComesBack() {
    StreamBudget budget = StreamBudgetFinder.find(new Slope().withoutChamberArea().plan());
    LevelBudget pond = budget.basins().get(0);
    double back = budget.toppedUp().transit().totalM3();
    double stopped = pond.stoppedLevelM().orElseThrow();

    assertEquals(back / Slope.POND_AREA_M2, stopped, 1e-10);
    assertEquals((stopped - 0.01) * Slope.POND_AREA_M2, pond.runsOverM3(), 1e-9);
    assertTrue(codes(budget).contains("runs-over-at-stop"));
    // besides what is in transit: the pool, the gravel's other half, the pipe
    double others = 1.5 * 0.3 + 0.4 * 12 * 0.08 * 0.4 * 0.5 + Math.PI / 4 * 0.06 * 0.06 * 25;
    assertEquals(budget.running().transit().totalM3() + others, pond.firstFillM3(), 1e-12);
  }

  /**
   * By hand: a pipe of 59 L that fills whatever little runs, from a pond that has less above the
   * level at which its skimmer, Q = 2/3 · 0.36 · 0.4 · √(2g) · h^1.5, passes the tap's draw alone.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.31, 0.4, 0.5, 0.55, 0.63, 0.7, 0.77, 0.81, 0.9, 0.98, 1.05, 1.1})
  void pondThatGivesLessThanAPipeHoldsFallsUntilATapGoesShort(double areaM2) {
    double draw = 1e-4;
    Slope slope = new Slope().withoutCheckValve().withoutChamberArea().sill(-0.05);
    StreamBudget budget = StreamBudgetFinder.find(slope.area(areaM2).tap(draw).plan());
    double over = Math.pow(draw / (0.24 * 0.4 * Math.sqrt(2 * 9.80665)), 2.0 / 3);
    double level = ((Basin) budget.running().state().network().point(Slope.POND)).levelM();

    assertEquals(-0.05 + over, level, 2e-9);
    assertTrue(codes(budget).contains("draws-go-short-at-start"), () -> "" + codes(budget));
    assertTrue(codes(budget).contains("starves-at-start"), () -> "" + codes(budget));
    assertTrue(budget.iterations() < 500, () -> "" + budget.iterations());
  }

  @Test
  void highSillStarvesAtTheStartAndALowOneDoesNot() {
    StreamBudget high = StreamBudgetFinder.find(new Slope().sill(-0.05).plan());
    assertTrue(codes(high).contains("starves-at-start"), () -> "" + codes(high));
    StreamBudget low = StreamBudgetFinder.find(new Slope().sill(-0.15).plan());
    assertFalse(codes(low).contains("starves-at-start"));
    assertTrue(
        high.running().streams().get(0).flowM3PerS() < low.running().streams().get(0).flowM3PerS());
  }

  @Test
  void badGeometryIsReportedPlainly() {
    StreamBudget budget =
        StreamBudgetFinder.find(
            new Slope().items(Slope.reach(3, 1.2), Slope.reach(6, 0), new Step(0.2, 0.5)).plan());
    List<String> codes = codes(budget);
    assertTrue(codes.contains("drops-do-not-add-up"), () -> "" + codes);
    assertTrue(codes.contains("level-reach"), () -> "" + codes);
  }

  @Test
  void waterThatStandsAboveItsMarksAtRestIsReported() {
    assertTrue(
        codes(StreamBudgetFinder.find(new Slope().overflow(-0.02).plan()))
            .contains("rest-above-overflow"));
    assertFalse(codes(StreamBudgetFinder.find(new Slope().plan())).contains("rest-above-overflow"));
  }

  @Test
  void overflowAboveTheGroundIsReported() {
    // the ground lies at 0.1 m
    assertTrue(
        codes(StreamBudgetFinder.find(new Slope().overflow(0.12).plan()))
            .contains("overflow-above-edge"));
    assertFalse(codes(StreamBudgetFinder.find(new Slope().plan())).contains("overflow-above-edge"));
  }

  @Test
  void sillBelowThePondsFloorIsReported() {
    Slope shallow = new Slope().shape(new BasinShape(List.of(new Row(-0.1, 12), new Row(0.3, 12))));

    assertTrue(codes(StreamBudgetFinder.find(shallow.plan())).contains("sill-below-floor"));
  }

  private static Holding holding(Slope slope) {
    StreamBudget budget = StreamBudgetFinder.find(slope.plan());
    return Holding.of(budget.running(), budget.basins().get(0));
  }

  @Test
  void howAPondHoldsIsReportedInShort() {
    double rate = 0.006 / DAY_S;

    assertEquals(Holding.RUNS_OVER_AT_STOP, holding(new Slope()));
    assertEquals(Holding.HOLDS, holding(new Slope().overflow(0.09)));
    assertEquals(Holding.RUNS_DRY, holding(new Slope().sill(-0.05)));
    assertEquals(Holding.NEEDS_TOPPING_UP, holding(new Slope().loss(20 * rate, 0)));
  }

  @Test
  void reachSteeperThanOneInFiveTumbles() {
    StreamBudget budget =
        StreamBudgetFinder.find(new Slope().items(Slope.reach(3, 0.9), new Step(1.1, 0.5)).plan());

    assertTrue(codes(budget).contains("tumbling-reach"), () -> "" + codes(budget));
  }

  @Test
  void shelfFartherDownThanEighteenInchesIsReported() {
    Slope deep = new Slope().shape(new TerracedPond(4, 3, 1, List.of(SHELF)).shape(0.05));
    Slope usual = new Slope().shape(new TerracedPond(4, 3, 1, List.of(SHELF)).shape(0));

    assertFalse(codes(StreamBudgetFinder.find(deep.plan())).contains("deep-shelf"));
    assertTrue(codes(StreamBudgetFinder.find(usual.plan())).contains("deep-shelf"));
  }

  @Test
  void overflowThatIsNotReportedIsAsHighAsTheMouthsTop() {
    LevelBudget pond =
        StreamBudgetFinder.find(new Slope().withoutOverflow().plan()).basins().get(0);

    // the mouth is 0.17 m high over a sill at −0.12 m
    assertEquals(0.05, pond.overflowM().orElseThrow(), 1e-12);
  }

  @Test
  void weatherInWhichNothingEvaporatesIsReported() {
    StreamBudget budget = StreamBudgetFinder.find(new Slope().dampWeather().plan());

    assertTrue(codes(budget).contains("no-evaporation"), () -> "" + codes(budget));
  }

  @Test
  void dropsThatAddUpAreNoFinding() {
    assertFalse(codes(StreamBudgetFinder.find(new Slope().plan())).contains("drops-do-not-add-up"));
  }

  /**
   * By hand: two shelves. A floor of 4 m² up to −0.9 m, 9 m² up to −0.45 m, 16 m² to the top, walls
   * upright: 4 · 0.45 + 9 · 0.45 + 16 · 0.45 = 13.05 m³ at 0 m.
   */
  @Test
  void pondWithTwoShelvesHoldsWhatClosedFormSays() {
    BasinShape shape =
        new BasinShape(
            List.of(
                new BasinShape.Row(-1.35, 4),
                new BasinShape.Row(-0.9, 4),
                new BasinShape.Row(-0.9, 9),
                new BasinShape.Row(-0.45, 9),
                new BasinShape.Row(-0.45, 16),
                new BasinShape.Row(0, 16)));
    assertEquals(13.05, shape.volumeM3(0), 1e-12);
    assertEquals(4 * 0.45 + 9 * 0.2, shape.volumeM3(-0.7), 1e-12);
    assertEquals(9, shape.areaM2(-0.9));
    assertEquals(16, shape.areaM2(0.5));
    assertEquals(4, shape.areaM2(-1.0));
  }
}
