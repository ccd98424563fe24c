package rillwright.solver.stream;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.network.Basin;

/**
 * What becomes of a basin's level.
 *
 * @param basin at rest
 * @param runningLevelM level after the start, nothing topped up, m; empty if its area is not known
 *     or it does not come to rest, since more or less returns than is drawn
 * @param stoppedLevelM level after a stop when it was topped up while running, nothing run over, m
 * @param firstFill water for the first start besides the basin's own
 * @param starve level at which its skimmers cannot pass what runs, or a pump draws air; empty if
 *     nothing tells it
 * @param daysToStarve days until evaporation and splash have brought it there; empty if that is not
 *     known
 * @param lossMPerDay by how much its level falls in a day by evaporation and splash, m
 * @param overflowM level at which it runs over, m: what the file says, else the top of its lowest
 *     skimmer's mouth (common practice, no source); empty without either
 * @param runsOverM3 water that runs over at such a stop, m³
 */
public record LevelBudget(
    Basin basin,
    OptionalDouble runningLevelM,
    OptionalDouble stoppedLevelM,
    FirstFill firstFill,
    Optional<StarveLevel> starve,
    OptionalDouble daysToStarve,
    OptionalDouble lossMPerDay,
    OptionalDouble overflowM,
    double runsOverM3) {

  /** What somebody may put up with between two fillings, days; common practice, no source. */
  private static final double FEW_DAYS = 7;

  /** Whether it starves so soon by evaporation and splash that it must be topped up. */
  public boolean needsToppingUp() {
    return daysToStarve.orElse(Double.POSITIVE_INFINITY) < FEW_DAYS;
  }

  /** Level at which it no longer feeds its pump, m; empty if nothing tells it. */
  public OptionalDouble starveLevelM() {
    return starve.stream().mapToDouble(StarveLevel::levelM).findFirst();
  }

  /** Water between its running level and the one at which it starves, m³; empty if not known. */
  public OptionalDouble volumeToStarveM3() {
    return starve.isEmpty() || runningLevelM.isEmpty() || basin.shape().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            basin.shape().get().volumeM3(runningLevelM.getAsDouble())
                - basin.shape().get().volumeM3(starve.get().levelM()));
  }

  /** All water for the first start besides the basin's own, m³. */
  public double firstFillM3() {
    return firstFill.totalM3();
  }

  /** Level at rest, m. */
  public double restLevelM() {
    return basin.levelM();
  }
}
