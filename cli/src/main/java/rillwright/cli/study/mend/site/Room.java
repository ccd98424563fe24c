package rillwright.cli.study.mend.site;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.Holding;
import rillwright.solver.stream.LevelBudget;
import rillwright.solver.stream.StreamBudget;

/**
 * How much a pond may fall while its pump runs.
 *
 * @param volumeM3 of its water above the level at which it starves, m³; 0 if none is
 * @param days that this lasts without topping up; empty where no evaporation is known
 * @param isLittle whether it starves, lasts less than a week, or that much more may be in transit
 *     than is computed
 */
public record Room(PointName pond, double volumeM3, OptionalDouble days, boolean isLittle) {
  private static final Set<Holding> SOON_STARVED =
      Set.of(Holding.RUNS_DRY, Holding.AT_ITS_LIMIT, Holding.NEEDS_TOPPING_UP);

  /** Those of all ponds of which the level that runs and the one that starves are known. */
  static List<Room> in(StreamBudget budget) {
    return budget.basins().stream()
        .filter(level -> level.volumeToStarveM3().isPresent())
        .map(level -> of(level, budget))
        .toList();
  }

  private static Room of(LevelBudget level, StreamBudget budget) {
    PointName pond = level.basin().name();
    return new Room(
        pond,
        Math.max(0, level.volumeToStarveM3().getAsDouble()),
        level.daysToStarve(),
        SOON_STARVED.contains(Holding.of(budget.running(), level))
            || budget.findings().stream()
                .filter(it -> it.code().equals("starves-if-more-in-transit"))
                .anyMatch(it -> it.at().equals(pond.value())));
  }
}
