package rillwright.solver.network;

import java.util.List;

/**
 * Area of a basin by level, straight between rows; two rows at one level are a shelf. One row is a
 * basin with upright walls.
 *
 * @param rows from the floor up; levels do not fall
 */
public record BasinShape(List<Row> rows) {

  /** Area at a level. */
  public record Row(double levelM, double areaM2) {}

  public BasinShape {
    rows = List.copyOf(rows);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("a basin's shape needs a row");
    }
  }

  /**
   * Water in the basin up to a level, m³; the last area goes on above the last row. Zero with fewer
   * than two rows.
   */
  public double volumeM3(double levelM) {
    if (rows.size() < 2) {
      return 0;
    }
    double volume = 0;
    for (int i = 1; i < rows.size(); i++) {
      Row below = rows.get(i - 1);
      Row above = rows.get(i);
      double top = Math.min(levelM, above.levelM());
      if (top > below.levelM()) {
        double share = (top - below.levelM()) / (above.levelM() - below.levelM());
        double areaAtTop = below.areaM2() + share * (above.areaM2() - below.areaM2());
        volume += (below.areaM2() + areaAtTop) / 2 * (top - below.levelM());
      }
    }
    Row last = rows.get(rows.size() - 1);
    return volume + last.areaM2() * Math.max(0, levelM - last.levelM());
  }
}
