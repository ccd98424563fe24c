package rillwright.solver.network;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.invariant.Require;

/**
 * Area of a basin by level, straight between rows; two rows at one level are a shelf. One row is a
 * basin with upright walls whose depth is not known.
 *
 * @param rows from the floor up; levels do not fall, areas are 0 or more
 */
public record BasinShape(List<Row> rows) {

  /** Area at a level. */
  public record Row(double levelM, double areaM2) {
    public Row {
      Require.finite("level of a basin's area", levelM, "m");
      Require.atLeast("area of a basin", areaM2, 0, "m²");
    }
  }

  public BasinShape {
    rows = Require.all("rows of a basin's shape", rows);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("shape of a basin has no row; it must have one or more");
    }
    for (int i = 1; i < rows.size(); i++) {
      Require.notBelow(
          "level of a basin's area", rows.get(i).levelM(), "row before", rows.get(i - 1).levelM());
    }
  }

  /**
   * Water in the basin up to a level, m³; the last area goes on above the last row. With one row
   * only, what lies above that row's level, negative below it: good for differences.
   */
  public double volumeM3(double levelM) {
    if (rows.size() == 1) {
      return rows.get(0).areaM2() * (levelM - rows.get(0).levelM());
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

  /** Area at a level, m²: above a shelf's edge at its level; the last area goes on above. */
  public double areaM2(double levelM) {
    if (rows.size() == 1 || levelM <= rows.get(0).levelM()) {
      return rows.get(0).areaM2();
    }
    for (int i = rows.size() - 1; i > 0; i--) {
      Row below = rows.get(i - 1);
      Row above = rows.get(i);
      if (levelM >= above.levelM()) {
        return above.areaM2();
      }
      if (levelM >= below.levelM()) {
        double share = (levelM - below.levelM()) / (above.levelM() - below.levelM());
        return below.areaM2() + share * (above.areaM2() - below.areaM2());
      }
    }
    return rows.get(0).areaM2();
  }

  /** The same shape with its areas multiplied: full of stone, it holds what the voids leave. */
  public BasinShape times(double share) {
    return new BasinShape(
        rows.stream().map(row -> new Row(row.levelM(), share * row.areaM2())).toList());
  }

  /** Level of the floor, m; negative infinity where it is not known. */
  public double floorM() {
    return rows.size() == 1 ? Double.NEGATIVE_INFINITY : rows.get(0).levelM();
  }

  /** Levels of its shelves, m, from the top down. */
  public List<Double> shelvesM() {
    List<Double> shelves = new ArrayList<>();
    for (int i = rows.size() - 1; i > 0; i--) {
      if (rows.get(i).levelM() == rows.get(i - 1).levelM()) {
        shelves.add(rows.get(i).levelM());
      }
    }
    return shelves;
  }
}
