package rillwright.solver.stream;

import rillwright.solver.network.Basin;

/**
 * How a basin falls by what evaporates and splashes away: the loss is from all wet surface, and the
 * basin alone makes up for it.
 *
 * @param basin whose shape is known
 * @param besideM2 wet surface of what it feeds, m²
 * @param loss greater than 0
 */
record Drying(Basin basin, double besideM2, WaterLoss loss) {
  private static final double SECONDS_PER_DAY = 86400;

  /** Layers of equal depth, each of the area in its middle. */
  private static final int SLICES = 200;

  /** By how much it falls in a day from a level, m. */
  double mPerDayAt(double levelM) {
    return loss.depthMPerS() * SECONDS_PER_DAY * wetShare(levelM);
  }

  /** All wet surface over the area of its water. */
  private double wetShare(double levelM) {
    double area = basin.shape().orElseThrow().areaM2(levelM);
    return (basin.evaporatesM2().orElse(area) + besideM2) / area;
  }

  /** Days in which it falls from one level, m, to another; 0 if it is there. */
  double daysToFall(double fromM, double toM) {
    if (fromM <= toM) {
      return 0;
    }
    double sum = 0;
    double slice = (fromM - toM) / SLICES;
    for (int i = 0; i < SLICES; i++) {
      sum += slice / wetShare(toM + (i + 0.5) * slice);
    }
    return sum / loss.depthMPerS() / SECONDS_PER_DAY;
  }
}
