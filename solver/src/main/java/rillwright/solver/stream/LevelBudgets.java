package rillwright.solver.stream;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.curve.FallingRoot;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Skimmer;

/** Reckons what becomes of each basin's level, once it is known what runs. */
final class LevelBudgets {
  private static final double LEVEL_TOLERANCE_M = 1e-12;

  private final RunningWater running;
  private final RunningWater toppedUp;
  private final WaterSources sources;

  /**
   * The budgets of a plan.
   *
   * @param running nothing topped up
   * @param toppedUp to the levels at rest
   */
  LevelBudgets(RunningWater running, RunningWater toppedUp) {
    this.running = running;
    this.toppedUp = toppedUp;
    this.sources = new WaterSources(running.state());
  }

  /**
   * That of a basin.
   *
   * @param levelM after the start, nothing topped up, m
   */
  LevelBudget of(Basin basin, double levelM) {
    double firstFill = running.transitFrom(basin.name()).totalM3() + standingM3(basin);
    OptionalDouble starve = starveLevelM(basin);
    OptionalDouble overflow = running.plan().overflowM(basin);
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
    double stopped = stoppedLevelM(basin, shape);
    double brim = overflow.orElse(Double.POSITIVE_INFINITY);
    Optional<Drying> drying =
        running
            .plan()
            .loss()
            .filter(loss -> loss.depthMPerS() > 0)
            .map(loss -> new Drying(shape, running.wetAreaM2(basin.name()), loss));
    return new LevelBudget(
        basin,
        OptionalDouble.of(levelM),
        OptionalDouble.of(stopped),
        firstFill,
        starve,
        starve.isPresent()
            ? drying.stream()
                .mapToDouble(it -> it.daysToFall(levelM, starve.getAsDouble()))
                .findFirst()
            : starve,
        drying.stream().mapToDouble(it -> it.mPerDayAt(levelM)).findFirst(),
        overflow,
        stopped > brim ? shape.volumeM3(stopped) - shape.volumeM3(brim) : 0);
  }

  /** What the pools and beds that are filled from a basin hold below their crests, m³. */
  private double standingM3(Basin basin) {
    return running.streams().stream()
        .filter(stream -> sources.isFrom(basin.name(), stream.stream().from()))
        .mapToDouble(StreamState::standingM3)
        .sum();
  }

  /** The level to which a basin rises with all that comes back, m. */
  private double stoppedLevelM(Basin basin, BasinShape shape) {
    double comesBack =
        toppedUp.transitFrom(basin.name()).totalM3() - toppedUp.leftChambersM3(basin);
    double volume = shape.volumeM3(basin.levelM()) + comesBack;
    double area = shape.areaM2(basin.levelM());
    double reach = 1 + 2 * Math.abs(comesBack) / Math.max(area, 1e-9);
    return FallingRoot.find(
        level -> volume - shape.volumeM3(level),
        basin.levelM() - reach,
        basin.levelM() + reach,
        LEVEL_TOLERANCE_M);
  }

  /** The level at which a skimmer of the basin passes just what runs through it. */
  private OptionalDouble starveLevelM(Basin basin) {
    OptionalDouble level = OptionalDouble.empty();
    for (Placed<Skimmer> skimmer : running.state().network().placed(Skimmer.class)) {
      if (skimmer.line().from().equals(basin.name()) && skimmer.index() == 0) {
        double flow = running.state().line(skimmer.line().name()).flowM3PerS();
        double needed = skimmer.part().levelToPassM(flow);
        level = OptionalDouble.of(Math.max(needed, level.orElse(Double.NEGATIVE_INFINITY)));
      }
    }
    return level;
  }
}
