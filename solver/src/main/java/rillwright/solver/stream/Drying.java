package rillwright.solver.stream;

import rillwright.solver.network.BasinShape;

/**
 * How a basin falls by what evaporates and splashes away: the loss is from all wet surface, and the
 * basin alone makes up for it.
 *
 * @param shape of the basin
 * @param besideM2 wet surface of what it feeds, m²
 * @param loss greater than 0
 */
record Drying(BasinShape shape, double besideM2, WaterLoss loss) {
  private static final double SECONDS_PER_DAY = 86400;

  /** Layers of equal depth, each of the area in its middle. */
  private static final int SLICES = 200;

  /** By how much it falls in a day from a level, m. */
  double mPerDayAt(double levelM) {
    double area = shape.areaM2(levelM);
    return loss.depthMPerS() * SECONDS_PER_DAY * (area + besideM2) / area;
  }

  /** Days in which it falls from one level, m, to another; 0 if it is there. */
  double daysToFall(double fromM, double toM) {
    if (fromM <= toM) {
      return 0;
    }
    double sum = 0;
    double slice = (fromM - toM) / SLICES;
    for (int i = 0; i < SLICES; i++) {
      double area = shape.areaM2(toM + (i + 0.5) * slice);
      sum += area / (area + besideM2) * slice;
    }
    return sum / loss.depthMPerS() / SECONDS_PER_DAY;
  }
}
