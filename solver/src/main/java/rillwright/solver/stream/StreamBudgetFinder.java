package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.curve.FallingRoot;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Line;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;

/**
 * Finds a {@link StreamBudget}: levels, lift and flow belong to each other, so that the levels at
 * which no water is lost are looked for with a balance at each.
 */
public final class StreamBudgetFinder {
  private static final double LEVEL_TOLERANCE_M = 1e-12;
  private static final int MOST_ROUNDS = 20;
  private static final double SECONDS_PER_DAY = 86400;
  private static final int SLICES = 200;

  /** How far below rest the level of a basin of unknown depth is looked for, in what it lacks. */
  private static final double FARTHER = 1.5;

  private final StreamPlan plan;
  private final List<Basin> basins = new ArrayList<>();

  private StreamBudgetFinder(StreamPlan plan) {
    this.plan = plan;
    plan.network().points().stream()
        .filter(Basin.class::isInstance)
        .forEach(point -> basins.add((Basin) point));
  }

  /**
   * The budget of a plan.
   *
   * @throws rillwright.solver.steady.NoBalance if the network has no balanced state
   */
  public static StreamBudget find(StreamPlan plan) {
    return new StreamBudgetFinder(plan).run();
  }

  private StreamBudget run() {
    Map<PointName, Double> rest = new LinkedHashMap<>();
    basins.forEach(basin -> rest.put(basin.name(), basin.levelM()));
    RunningWater toppedUp = RunningWater.at(plan, rest);
    Map<PointName, Double> levels = new LinkedHashMap<>(rest);
    double moved = 1;
    for (int round = 0; round < MOST_ROUNDS && moved > LEVEL_TOLERANCE_M; round++) {
      moved = 0;
      for (Basin basin : basins) {
        double before = levels.get(basin.name());
        double after = runningLevelM(basin, levels, toppedUp);
        levels.put(basin.name(), after);
        moved = basins.size() == 1 ? 0 : Math.max(moved, Math.abs(after - before));
      }
    }
    RunningWater running = RunningWater.at(plan, levels);
    List<LevelBudget> budgets = new ArrayList<>();
    for (Basin basin : basins) {
      budgets.add(budget(basin, levels.get(basin.name()), running, toppedUp));
    }
    return new StreamBudget(
        running, toppedUp, budgets, new StreamFindings(running, toppedUp, budgets).list());
  }

  private double runningLevelM(Basin basin, Map<PointName, Double> levels, RunningWater toppedUp) {
    double taken = toppedUp.transitFrom(basin.name()).totalM3();
    double fromChambers = toppedUp.leftChambersM3(basin);
    if (basin.shape().isEmpty() || (taken == 0 && fromChambers == 0)) {
      return basin.levelM();
    }
    BasinShape shape = basin.shape().get();
    double area = shape.areaM2(basin.levelM());
    double low = Math.max(shape.floorM(), basin.levelM() - FARTHER * taken / area - 1);
    return FallingRoot.find(
        level -> surplusM3(basin, level, levels),
        low,
        basin.levelM() + Math.max(0, fromChambers) / area,
        LEVEL_TOLERANCE_M);
  }

  /** What a basin has given off down to a level, less what of it is in transit then. */
  private double surplusM3(Basin basin, double levelM, Map<PointName, Double> others) {
    Map<PointName, Double> levels = new LinkedHashMap<>(others);
    levels.put(basin.name(), levelM);
    RunningWater water = RunningWater.at(plan, levels);
    BasinShape shape = basin.shape().orElseThrow();
    return shape.volumeM3(basin.levelM())
        - shape.volumeM3(levelM)
        + water.leftChambersM3(basin)
        - water.transitFrom(basin.name()).totalM3();
  }

  private LevelBudget budget(
      Basin basin, double level, RunningWater running, RunningWater toppedUp) {
    double firstFill = running.transitFrom(basin.name()).totalM3() + standingM3(basin, running);
    OptionalDouble starve = starveLevelM(basin, running);
    OptionalDouble overflow = plan.overflowM(basin);
    if (basin.shape().isEmpty()) {
      return new LevelBudget(
          basin,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          firstFill,
          starve,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          overflow,
          0);
    }
    BasinShape shape = basin.shape().get();
    double comesBack =
        toppedUp.transitFrom(basin.name()).totalM3() - toppedUp.leftChambersM3(basin);
    double stopped = levelOfM(shape, shape.volumeM3(basin.levelM()) + comesBack, basin);
    double brim = overflow.orElse(Double.POSITIVE_INFINITY);
    double runsOver = stopped > brim ? shape.volumeM3(stopped) - shape.volumeM3(brim) : 0;
    double beside = running.wetAreaM2(basin.name());
    return new LevelBudget(
        basin,
        OptionalDouble.of(level),
        OptionalDouble.of(stopped),
        firstFill,
        starve,
        daysToFall(shape, beside, level, starve),
        lossMPerDay(shape, beside, level),
        overflow,
        runsOver);
  }

  /** What the pools and beds that are filled from a basin hold below their crests, m³. */
  private static double standingM3(Basin basin, RunningWater running) {
    WaterSources sources = new WaterSources(running.state());
    double standing = 0;
    for (StreamState stream : running.streams()) {
      boolean fromHere =
          sources.of(stream.stream().from()).filter(basin.name()::equals).isPresent();
      standing += fromHere ? stream.standingM3() : 0;
    }
    return standing;
  }

  private Optional<WaterLoss> loss() {
    return plan.loss().filter(loss -> loss.depthMPerS() > 0);
  }

  private OptionalDouble daysToFall(
      BasinShape shape, double besideM2, double fromM, OptionalDouble toM) {
    Optional<WaterLoss> loss = loss();
    return loss.isPresent() && toM.isPresent()
        ? OptionalDouble.of(
            secondsToFall(shape, besideM2, loss.get(), fromM, toM.getAsDouble()) / SECONDS_PER_DAY)
        : OptionalDouble.empty();
  }

  private OptionalDouble lossMPerDay(BasinShape shape, double besideM2, double levelM) {
    Optional<WaterLoss> loss = loss();
    return loss.isPresent()
        ? OptionalDouble.of(
            loss.get().depthMPerS()
                * SECONDS_PER_DAY
                * (shape.areaM2(levelM) + besideM2)
                / shape.areaM2(levelM))
        : OptionalDouble.empty();
  }

  private static double levelOfM(BasinShape shape, double volumeM3, Basin basin) {
    double more = volumeM3 - shape.volumeM3(basin.levelM());
    double area = shape.areaM2(basin.levelM());
    double reach = 1 + 2 * Math.abs(more) / Math.max(area, 1e-9);
    return FallingRoot.find(
        level -> volumeM3 - shape.volumeM3(level),
        basin.levelM() - reach,
        basin.levelM() + reach,
        LEVEL_TOLERANCE_M);
  }

  /** The level at which a skimmer of the basin passes just what runs through it. */
  private OptionalDouble starveLevelM(Basin basin, RunningWater running) {
    OptionalDouble level = OptionalDouble.empty();
    for (Line line : running.state().network().lines()) {
      double flow = running.state().line(line.name()).flowM3PerS();
      boolean skims =
          line.from().equals(basin.name())
              && !line.parts().isEmpty()
              && line.parts().get(0) instanceof Skimmer;
      if (skims) {
        double needed = ((Skimmer) line.parts().get(0)).levelToPassM(flow);
        level = OptionalDouble.of(Math.max(needed, level.orElse(Double.NEGATIVE_INFINITY)));
      }
    }
    return level;
  }

  /** Time in which the loss from all wet surface brings a basin from one level to another, s. */
  private static double secondsToFall(
      BasinShape shape, double besideM2, WaterLoss loss, double fromM, double toM) {
    if (fromM <= toM) {
      return 0;
    }
    double sum = 0;
    double slice = (fromM - toM) / SLICES;
    for (int i = 0; i < SLICES; i++) {
      double area = shape.areaM2(toM + (i + 0.5) * slice);
      sum += area / (area + besideM2) * slice;
    }
    return sum / loss.depthMPerS();
  }
}
