package rillwright.cli.study;

import java.util.Optional;
import rillwright.solver.network.Basin;
import rillwright.solver.network.PointName;

/**
 * How often the water of a basin is pumped round.
 *
 * @param basin which
 * @param volumeM3 of the basin, m³
 * @param perDay times a day
 * @param onceInS once in so many seconds of running
 */
public record Turnover(PointName basin, double volumeM3, double perDay, double onceInS) {
  private static final double SECONDS_PER_HOUR = 3600;

  /**
   * Of a basin; empty if nothing is drawn or its volume is not known: without a depth an area tells
   * none.
   *
   * @param drawnM3PerS flow out of it, m³/s
   * @param hoursPerDay that it is drawn
   */
  public static Optional<Turnover> of(Basin basin, double drawnM3PerS, double hoursPerDay) {
    double volume =
        basin
            .shape()
            .filter(shape -> Double.isFinite(shape.floorM()))
            .map(shape -> shape.volumeM3(basin.levelM()))
            .orElse(0.0);
    if (!(drawnM3PerS > 0 && volume > 0)) {
      return Optional.empty();
    }
    double perDay = drawnM3PerS * SECONDS_PER_HOUR * hoursPerDay / volume;
    return Optional.of(new Turnover(basin.name(), volume, perDay, volume / drawnM3PerS));
  }
}
