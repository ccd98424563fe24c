package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.solver.law.curve.FallingRoot;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.NoBalance;

/**
 * Finds a {@link StreamBudget}: levels, lift and flow belong to each other, so that the levels at
 * which no water is lost are looked for with a balance at each.
 */
public final class StreamBudgetFinder {
  private static final double LEVEL_TOLERANCE_M = 1e-12;
  private static final int MOST_ROUNDS = 20;

  /** How closely the lowest level with a balance is found, a share of the way down to it. */
  private static final double WAY_TOLERANCE = 1e-9;

  /** How far below rest the level of a basin of unknown depth is looked for, in what it lacks. */
  private static final double FARTHER = 1.5;

  private final StreamPlan plan;
  private final List<Basin> basins = new ArrayList<>();

  private StreamBudgetFinder(StreamPlan plan) {
    this.plan = plan;
    basins.addAll(plan.network().points(Basin.class));
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
    Optional<RunningWater> settled = balanced(levels);
    RunningWater running = settled.orElseGet(() -> lowest(rest, levels));
    levels.replaceAll((name, level) -> ((Basin) running.state().network().point(name)).levelM());
    LevelBudgets computing = new LevelBudgets(running, toppedUp);
    List<LevelBudget> budgets =
        basins.stream().map(basin -> computing.of(basin, levels.get(basin.name()))).toList();
    return new StreamBudget(
        running,
        toppedUp,
        budgets,
        new StreamFindings(running, toppedUp, budgets, settled.isEmpty()).list());
  }

  private Optional<RunningWater> balanced(Map<PointName, Double> levels) {
    try {
      return Optional.of(RunningWater.at(plan, levels));
    } catch (NoBalance drawsGoShort) {
      return Optional.empty();
    }
  }

  /** As far down from rest towards levels at which draws go short as the network has a balance. */
  private RunningWater lowest(Map<PointName, Double> rest, Map<PointName, Double> tooLow) {
    RunningWater lowest = RunningWater.at(plan, rest);
    double balances = 0;
    double fails = 1;
    while (fails - balances > WAY_TOLERANCE) {
      double tried = (balances + fails) / 2;
      Map<PointName, Double> levels = new LinkedHashMap<>(rest);
      levels.replaceAll((name, level) -> level + tried * (tooLow.get(name) - level));
      Optional<RunningWater> water = balanced(levels);
      balances = water.isPresent() ? tried : balances;
      fails = water.isPresent() ? fails : tried;
      lowest = water.orElse(lowest);
    }
    return lowest;
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
    BasinShape shape = basin.shape().orElseThrow();
    double given = shape.volumeM3(basin.levelM()) - shape.volumeM3(levelM);
    return balanced(levels)
        .map(
            water ->
                given + water.leftChambersM3(basin) - water.transitFrom(basin.name()).totalM3())
        .orElse(given); // so low that draws go short: nothing runs
  }
}
