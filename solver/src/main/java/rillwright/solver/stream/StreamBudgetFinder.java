package rillwright.solver.stream;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  /** How far below rest the level of a basin of unknown depth is looked for, in what it lacks. */
  private static final double FARTHER = 1.5;

  /** How closely the lowest level with a balance is found, m: finer than any ripple. */
  private static final double BALANCE_TOLERANCE_M = 1e-9;

  private final StreamPlan plan;
  private final List<Basin> basins;
  private final RunningWater toppedUp;

  /** Water with a balance, the last that was tried: the next balance is like its own. */
  private RunningWater last;

  private int iterations;

  /** Levels of the basins as far as they are found; the network has a balance at them. */
  private final Map<PointName, Double> levels = new LinkedHashMap<>();

  private StreamBudgetFinder(StreamPlan plan) {
    this.plan = plan;
    this.basins = plan.network().points(Basin.class);
    basins.forEach(basin -> levels.put(basin.name(), basin.levelM()));
    this.toppedUp = RunningWater.at(plan, levels);
    this.last = toppedUp;
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
    List<Basin> moving = basins.stream().filter(this::moves).toList();
    double moved = moving.isEmpty() ? 0 : 1;
    boolean goesShort = false;
    for (int round = 0; round < MOST_ROUNDS && moved > LEVEL_TOLERANCE_M; round++) {
      moved = 0;
      goesShort = false;
      for (Basin basin : moving) {
        Descent descent = new Descent(basin);
        double level = descent.levelM();
        goesShort |= descent.goesShortAt(level);
        double before = levels.put(basin.name(), level);
        moved = moving.size() == 1 ? 0 : Math.max(moved, Math.abs(level - before));
      }
    }
    RunningWater running = moving.isEmpty() ? toppedUp : RunningWater.at(plan, levels);
    LevelBudgets computing = new LevelBudgets(running, toppedUp);
    List<LevelBudget> budgets =
        basins.stream().map(basin -> computing.of(basin, levels.get(basin.name()))).toList();
    return new StreamBudget(
        running,
        toppedUp,
        budgets,
        new StreamFindings(running, toppedUp, budgets, goesShort).list(),
        iterations);
  }

  /** Whether a basin of known shape gives off any water. */
  private boolean moves(Basin basin) {
    return basin.shape().isPresent()
        && (toppedUp.transitFrom(basin.name()).totalM3() != 0
            || toppedUp.leftChambersM3(basin) != 0);
  }

  /**
   * A basin's fall to the level at which what it gave off is in transit, the others staying where
   * they are; or as far down as the network has a balance, if draws go short before.
   */
  private final class Descent {
    private final Basin basin;
    private final BasinShape shape;

    /** The lowest level that was tried at which there is a balance, and the highest without, m. */
    private double balancesM;

    private double goesShortM = Double.NEGATIVE_INFINITY;

    Descent(Basin basin) {
      this.basin = basin;
      this.shape = basin.shape().orElseThrow();
      this.balancesM = levels.get(basin.name());
    }

    double levelM() {
      double taken = toppedUp.transitFrom(basin.name()).totalM3();
      double fromChambers = toppedUp.leftChambersM3(basin);
      double area = shape.areaM2(basin.levelM());
      double level =
          FallingRoot.find(
              this::surplusM3,
              Math.max(shape.floorM(), basin.levelM() - FARTHER * taken / area - 1),
              basin.levelM() + Math.max(0, fromChambers) / area,
              LEVEL_TOLERANCE_M);
      return goesShortAt(level) ? balancesM : level;
    }

    /** Whether draws go short just below a level. */
    boolean goesShortAt(double levelM) {
      return levelM - goesShortM <= BALANCE_TOLERANCE_M;
    }

    /** What the basin has given off down to a level, less what of it is in transit then. */
    private double surplusM3(double levelM) {
      Map<PointName, Double> tried = new LinkedHashMap<>(levels);
      tried.put(basin.name(), levelM);
      double given = shape.volumeM3(basin.levelM()) - shape.volumeM3(levelM);
      double surplus = given; // where draws go short nothing runs
      try {
        last = last.at(tried);
        balancesM = Math.min(balancesM, levelM);
        surplus += last.leftChambersM3(basin) - last.transitFrom(basin.name()).totalM3();
      } catch (NoBalance drawsGoShort) {
        goesShortM = Math.max(goesShortM, levelM);
      }
      iterations += last.state().iterations();
      return goesShortAt(balancesM) ? 0 : surplus;
    }
  }
}
