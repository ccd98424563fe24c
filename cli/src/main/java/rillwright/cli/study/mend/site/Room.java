package rillwright.cli.study.mend.site;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.LevelBudget;
import rillwright.solver.stream.StreamBudget;

/**
 * How much a pond may fall while its pump runs.
 *
 * @param volumeM3 of its water above the level at which it starves, m³; 0 if none is
 * @param days that this lasts without topping up; empty where no evaporation is known
 * @param isLittle whether that is said of the stream as a warning
 */
public record Room(PointName pond, double volumeM3, OptionalDouble days, boolean isLittle) {
  private static final Set<String> LITTLE =
      Set.of("starves-without-topping-up", "starves-if-more-in-transit");

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
        budget.findings().stream()
            .anyMatch(it -> LITTLE.contains(it.code()) && it.at().equals(pond.value())));
  }
}
