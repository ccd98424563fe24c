package rillwright.solver.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.finding.Figure;
import rillwright.solver.finding.Finding;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.BasinShape.Row;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.PumpInlet;
import rillwright.solver.network.Run;
import rillwright.solver.stream.time.StartAndStop;
import rillwright.solver.water.Water;

/**
 * A hidden reservoir full of stone below a fall: 4 m² of hole with 40 % voids, 0.9 m deep, a vault
 * of 0.2 m² in it, worked by hand.
 */
class StoneReservoirTest {
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
  private static final PointName RESERVOIR = new PointName("reservoir");
  private static final PointName VAULT = new PointName("vault");
  private static final PointName FALL = new PointName("fall");
  private static final Bore BORE = new Bore(0.05);
  private static final double WATER_AREA_M2 = 0.4 * 4;
  private static final double INTAKE_M = -0.8;
  private static final double PER_DAY_M = 0.006;

  private OptionalDouble leastLevelM = UNKNOWN;
  private OptionalDouble evaporatesM2 = UNKNOWN;
  private OptionalDouble minSubmergenceM = UNKNOWN;
  private OptionalDouble vaultAreaM2 = OptionalDouble.of(0.2);
  private double boxAreaM2 = 0.5;

  private StreamPlan plan() {
    BasinShape shape = new BasinShape(List.of(new Row(-0.9, 4), new Row(0, 4))).times(0.4);
    PumpCurve curve =
        new PumpCurve(List.of(new PumpPoint(0, 4, UNKNOWN), new PumpPoint(0.006, 0, UNKNOWN)));
    Pump pump =
        new Pump(
            "test",
            new PumpSet(curve, 1, 1, PumpSet.Arrangement.PARALLEL, Optional.empty()),
            new PumpInlet(
                UNKNOWN, Optional.of(BORE), new SuctionNeeds(minSubmergenceM, UNKNOWN, UNKNOWN)));
    Network network =
        new Network(
            Water.at(20),
            0,
            List.of(
                new Basin(
                    RESERVOIR,
                    0,
                    Optional.of(shape),
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    leastLevelM,
                    evaporatesM2,
                    true),
                new Chamber(VAULT, -0.9, INTAKE_M, UNKNOWN, vaultAreaM2),
                new Fall(
                    FALL,
                    1.5,
                    PowerWeir.ofDischargeCoefficient(0.6, 0.5),
                    0.15,
                    UNKNOWN,
                    Optional.empty())),
            List.of(
                line("holes", RESERVOIR, VAULT, loss(0.01)),
                line(
                    "supply",
                    VAULT,
                    FALL,
                    pump,
                    loss(0.3),
                    new CheckValve("swing", 0, 2, BORE),
                    new Run(6, BORE, new Friction.Roughness(1e-5), "pipe"))));
    WaterLoss loss = new WaterLoss(PER_DAY_M / 86400, false, 0);
    Map<PointName, FallBox> boxes =
        boxAreaM2 > 0 ? Map.of(FALL, new FallBox(boxAreaM2, 0.25)) : Map.of();
    return new StreamPlan(network, List.of(), boxes, Optional.of(loss));
  }

  /**
   * Item by item: over the box's crest and below it, a 6 m pipe, and what the vault gives because
   * it stands lower while running; the checks are closed forms.
   */
  @Test
  void firstFillIsTheSumOfWhatMustBeFilled() {
    StreamBudget budget = StreamBudgetFinder.find(plan());
    FirstFill fill = budget.basins().get(0).firstFill();
    double head = Math.pow(flow(budget) / (0.2 * Math.sqrt(2 * 9.80665)), 2.0 / 3);
    double vault = budget.running().state().point(VAULT).headM().getAsDouble();

    assertEquals(0.5 * head, fill.volumeM3().get(FirstFill.Item.TRANSIT), 1e-12);
    assertEquals(0.5 * 0.25, fill.volumeM3().get(FirstFill.Item.BOXES), 1e-12);
    assertEquals(Math.PI / 4 * 0.05 * 0.05 * 6, fill.volumeM3().get(FirstFill.Item.PIPES), 1e-12);
    assertEquals(0.2 * vault, fill.volumeM3().get(FirstFill.Item.CHAMBERS), 1e-12);
    assertEquals(4, fill.volumeM3().size());
    assertEquals(
        fill.volumeM3().values().stream().mapToDouble(Double::doubleValue).sum(),
        budget.basins().get(0).firstFillM3(),
        1e-12);
  }

  private static Part loss(double headM) {
    return new Loss(new PowerLoss(headM, 0.003, 2), Optional.empty());
  }

  private static Line line(String name, PointName from, PointName to, Part... parts) {
    LineEnd free = new LineEnd(EndLoss.NONE, Optional.empty());
    return new Line(new LineName(name), from, to, Optional.of(BORE), List.of(parts), free, free);
  }

  private static List<String> codes(StreamBudget budget) {
    return budget.findings().stream().map(Finding::code).toList();
  }

  private static double flow(StreamBudget budget) {
    return budget.running().state().line(new LineName("supply")).flowM3PerS();
  }

  /** By how much the vault stands lower: the holes' 0.01 m at 3 L/s, by the square of the flow. */
  private static double lostOnTheWay(StreamBudget budget) {
    return 0.01 * Math.pow(flow(budget) / 0.003, 2);
  }

  /** S = D (1 + 2.3 v/√(g D)), ANSI/HI 9.8. */
  private static double submergence(double flowM3PerS) {
    double velocity = flowM3PerS / (Math.PI / 4 * 0.05 * 0.05);
    return 0.05 * (1 + 2.3 * velocity / Math.sqrt(9.80665 * 0.05));
  }

  /** Water of the box and the vault's: both come out of 1.6 m² and not out of 4. */
  @Test
  void levelMovesInTheVoids() {
    vaultAreaM2 = UNKNOWN;
    StreamBudget budget = StreamBudgetFinder.find(plan());
    double head = Math.pow(flow(budget) / (0.2 * Math.sqrt(2 * 9.80665)), 2.0 / 3);

    assertEquals(
        -0.5 * head / WATER_AREA_M2, budget.basins().get(0).runningLevelM().getAsDouble(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"-0.8,", "-0.6, -0.6"})
  void starvesAtItsLeastLevelAndTheDepthThatThePumpAsksFor(double least, Double given) {
    leastLevelM = given == null ? UNKNOWN : OptionalDouble.of(given);
    StreamBudget budget = StreamBudgetFinder.find(plan());
    LevelBudget level = budget.basins().get(0);
    double starves = least + submergence(flow(budget)) + lostOnTheWay(budget);
    double perDay = PER_DAY_M * (WATER_AREA_M2 + 0.5) / WATER_AREA_M2;

    assertEquals(starves, level.starveLevelM().getAsDouble(), 1e-12);
    assertTrue(level.starve().get().drawsAir());
    assertEquals(
        (level.runningLevelM().getAsDouble() - starves) / perDay,
        level.daysToStarve().getAsDouble(),
        1e-9);
  }

  @Test
  void aSheetSaysTheDepthItself() {
    minSubmergenceM = OptionalDouble.of(0.15);
    StreamBudget budget = StreamBudgetFinder.find(plan());
    LevelBudget level = budget.basins().get(0);
    double lost = lostOnTheWay(budget);
    assertTrue(lost > 0.005, "" + lost);
    assertEquals(INTAKE_M + 0.15, level.starveLevelM().getAsDouble() - lost, 1e-12);
  }

  /** Covered: only the box evaporates, and without one nothing does. */
  @Test
  void coveredStoneLosesNothing() {
    evaporatesM2 = OptionalDouble.of(0);
    LevelBudget level = StreamBudgetFinder.find(plan()).basins().get(0);
    assertEquals(PER_DAY_M * 0.5 / WATER_AREA_M2, level.lossMPerDay().getAsDouble(), 1e-12);
    evaporatesM2 = OptionalDouble.of(4);
    level = StreamBudgetFinder.find(plan()).basins().get(0);
    assertEquals(PER_DAY_M * 4.5 / WATER_AREA_M2, level.lossMPerDay().getAsDouble(), 1e-12);
    evaporatesM2 = OptionalDouble.of(0);
    boxAreaM2 = 0;
    assertTrue(StreamBudgetFinder.find(plan()).basins().get(0).daysToStarve().isEmpty());
  }

  @Test
  void drawingAirIsFound() {
    assertFalse(codes(StreamBudgetFinder.find(plan())).contains("draws-air-running"));
    leastLevelM = OptionalDouble.of(-0.05);
    assertTrue(codes(StreamBudgetFinder.find(plan())).contains("draws-air-running"));
  }

  /** In time the reservoir comes to the level of the budget, and no water is lost on the way. */
  @Test
  void inTimeItComesToTheSameLevel() {
    StreamBudget budget = StreamBudgetFinder.find(plan());
    double steady = StartAndStop.of(budget.running()).steady().levelM().get(RESERVOIR);
    assertEquals(budget.basins().get(0).runningLevelM().getAsDouble(), steady, 2e-4);
  }

  private static double figure(Finding finding, String name) {
    return finding.figures().stream()
        .filter(figure -> figure.name().equals(name))
        .mapToDouble(Figure::value)
        .findFirst()
        .orElseThrow();
  }

  private static Finding the(String code, StreamBudget budget) {
    return budget.findings().stream()
        .filter(it -> it.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  /**
   * What stays full after a stop: the box below its crest and the pipe downstream of the check
   * valve.
   */
  @Test
  void whatStaysFullCanFreeze() {
    StreamBudget budget = StreamBudgetFinder.find(plan());
    Finding found = the("can-freeze", budget);
    double pipe = Math.PI / 4 * 0.05 * 0.05 * 6;
    assertEquals(pipe, figure(found, "pipes"), 1e-12);
    assertEquals(0.5 * 0.25, figure(found, "boxes"), 1e-12);
    assertEquals(pipe + 0.5 * 0.25, figure(found, "stays"), 1e-12);
    double head = Math.pow(flow(budget) / (0.2 * Math.sqrt(2 * 9.80665)), 2.0 / 3);
    assertEquals(0.5 * head, figure(found, "comesBack"), 1e-12);
  }

  /** With its crest blocked all of the fall's water is lost: 4 m² of 40 % voids over the flow. */
  @Test
  void aBlockedCrestTakesTheReservoirDown() {
    StreamBudget budget = StreamBudgetFinder.find(plan());
    LevelBudget reservoir = budget.basins().get(0);
    double height =
        reservoir.runningLevelM().getAsDouble() - reservoir.starveLevelM().getAsDouble();
    Finding found = the("if-blocked", budget);
    assertEquals(flow(budget), figure(found, "flow"), 1e-15);
    assertEquals(4 * 0.4 * height / flow(budget), figure(found, "timeToStarve"), 1e-6);
  }
}
