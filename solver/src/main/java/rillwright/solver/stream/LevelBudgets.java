package rillwright.solver.stream;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.curve.FallingRoot;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;

/** Computes what becomes of each basin's level, once it is known what runs. */
final class LevelBudgets {
  private static final double LEVEL_TOLERANCE_M = 1e-12;

  private final RunningWater running;
  private final RunningWater toppedUp;

  /**
   * The budgets of a plan.
   *
   * @param running nothing topped up
   * @param toppedUp to the levels at rest
   */
  LevelBudgets(RunningWater running, RunningWater toppedUp) {
    this.running = running;
    this.toppedUp = toppedUp;
  }

  /**
   * That of a basin.
   *
   * @param levelM after the start, nothing topped up, m
   */
  LevelBudget of(Basin basin, double levelM) {
    FirstFill firstFill = FirstFill.of(running, basin);
    Optional<StarveLevel> starve = StarveLevel.of(running.state(), basin);
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
            .map(loss -> new Drying(basin, running.wetAreaM2(basin.name()), loss));
    return new LevelBudget(
        basin,
        running.isInBalance(basin.name()) ? OptionalDouble.of(levelM) : OptionalDouble.empty(),
        OptionalDouble.of(stopped),
        firstFill,
        starve,
        drying.stream()
            .flatMapToDouble(
                it -> starve.stream().mapToDouble(low -> it.daysToFall(levelM, low.levelM())))
            .filter(Double::isFinite)
            .findFirst(),
        drying.stream().mapToDouble(it -> it.mPerDayAt(levelM)).findFirst(),
        overflow,
        stopped > brim ? shape.volumeM3(stopped) - shape.volumeM3(brim) : 0);
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
}
