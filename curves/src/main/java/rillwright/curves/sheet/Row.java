package rillwright.curves.sheet;

import rillwright.curves.sheet.text.Cell;
import rillwright.solver.law.pump.PumpPoint;

/**
 * A row that is a point.
 *
 * @param flow where the flow stands
 * @param head where the head stands
 * @param point its values
 */
record Row(Cell flow, Cell head, PumpPoint point) {}
