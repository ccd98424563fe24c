package rillwright.solver.stream.time;

import java.util.List;
import rillwright.solver.network.BasinShape;

/**
 * How high the water stands in pipes that are filled so far. What is followed in time is how full
 * they are, which changes smoothly; the height would leap where the pipes change their slope.
 *
 * @param shape of the pipes, its area constant between two levels
 */
record Front(BasinShape shape) {

  /** What they hold when full, m³. */
  double volumeM3() {
    return shape.volumeM3(topM());
  }

  private double topM() {
    List<BasinShape.Row> rows = shape.rows();
    return rows.get(rows.size() - 1).levelM();
  }

  /**
   * Level of the water, m.
   *
   * @param share of them that is full, 0 to 1; more or less is taken as that
   */
  double levelM(double share) {
    double left = share * volumeM3();
    List<BasinShape.Row> rows = shape.rows();
    for (int i = 1; i < rows.size(); i++) {
      double height = rows.get(i).levelM() - rows.get(i - 1).levelM();
      double holds = rows.get(i).areaM2() * height;
      if (left < holds) {
        return rows.get(i - 1).levelM() + Math.max(0, left) / rows.get(i).areaM2();
      }
      left -= holds;
    }
    return topM();
  }
}
