package rillwright.curves.sheet;

import java.util.List;
import java.util.Optional;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.solver.law.pump.PumpCurve;

/**
 * A pump as its data sheet describes it.
 *
 * @param name of the sheet, for messages
 * @param curve head and power through the published points
 * @param facts what else the sheet says
 * @param passedOver headings of columns that were not read
 * @param reordered whether its points stand in another order than by flow
 * @param units of its columns; empty where each value has its own
 */
public record DataSheet(
    String name,
    PumpCurve curve,
    SheetFacts facts,
    List<String> passedOver,
    boolean reordered,
    Optional<WrittenUnits> units) {
  public DataSheet {
    passedOver = List.copyOf(passedOver);
  }
}
