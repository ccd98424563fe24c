package rillwright.solver.stream.time;

import java.util.List;
import rillwright.solver.network.BasinShape;

/**
 * A basin, chamber, box, pool or pipe: area by level.
 *
 * @param shape of it
 */
record Tank(BasinShape shape) implements Store {
  private static final double LEAST_AREA_M2 = 1e-6;

  /** Upright walls, and nothing in it at a level. */
  static Tank upright(double areaM2, double emptyM) {
    return new Tank(new BasinShape(List.of(new BasinShape.Row(emptyM, areaM2))));
  }

  @Override
  public double volumeM3(double levelM) {
    return shape.volumeM3(levelM);
  }

  @Override
  public double areaM2(double levelM) {
    return Math.max(LEAST_AREA_M2, shape.areaM2(levelM));
  }
}
