package rillwright.curves.sheet;

import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;
import rillwright.solver.law.Gravity;

/**
 * A column that counts.
 *
 * @param kind what it holds
 * @param index place in a row, from 0
 * @param unit of its numbers
 */
record Column(ColumnKind kind, int index, Unit unit) {
  /** A number of this column in SI; a pressure is turned into the head of such water. */
  double toSi(double number, double densityKgPerM3) {
    double si = unit.toSi(number);
    return unit.dimension() == Dimension.PRESSURE
        ? si / (densityKgPerM3 * Gravity.STANDARD_M_PER_S2)
        : si;
  }
}
