package rillwright.curves.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.curves.sheet.fault.FaultList;
import rillwright.curves.sheet.text.Cell;
import rillwright.curves.sheet.text.NumberReader;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.pump.PumpPoint;

/** Reads rows of numbers under a header. */
final class RowReader {
  private final Header header;
  private final double densityKgPerM3;
  private final NumberReader numbers;
  private final FaultList faults;

  RowReader(Header header, double densityKgPerM3, NumberReader numbers, FaultList faults) {
    this.header = header;
    this.densityKgPerM3 = densityKgPerM3;
    this.numbers = numbers;
    this.faults = faults;
  }

  /** A row with its point, or nothing if the row is not a point, which is then noted. */
  Optional<Row> read(List<Cell> cells) {
    for (Cell extra : cells.subList(Math.min(header.count(), cells.size()), cells.size())) {
      if (!extra.isEmpty()) {
        faults.add(
            extra.line(),
            extra.column(),
            "%s has no heading: the row has more cells than there are columns; write 2000 and not"
                    .formatted(PlainText.quoted(extra.text()))
                + " 2,000, and decimals with a point (or semicolons between all columns)");
        return Optional.empty();
      }
    }
    OptionalDouble flow = valueOf(ColumnKind.FLOW, cells);
    OptionalDouble head = valueOf(ColumnKind.HEAD, cells);
    OptionalDouble power = valueOf(ColumnKind.POWER, cells);
    OptionalDouble npsh = valueOf(ColumnKind.NPSH_REQUIRED, cells);
    if (flow.isEmpty() || head.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Cell> written = new HashMap<>();
    header.columns().keySet().forEach(kind -> written.put(kind.heading(), cellOf(kind, cells)));
    return Optional.of(
        new Row(
            new WrittenPoint(
                "line " + cells.get(0).line(),
                written.get(ColumnKind.FLOW.heading()).text(),
                written.get(ColumnKind.HEAD.heading()).text(),
                power.isEmpty() ? "" : written.get(ColumnKind.POWER.heading()).text(),
                new PumpPoint(flow.getAsDouble(), head.getAsDouble(), power, npsh)),
            written));
  }

  private OptionalDouble valueOf(ColumnKind kind, List<Cell> cells) {
    Optional<Column> column = header.find(kind);
    if (column.isEmpty()) {
      return OptionalDouble.empty();
    }
    Cell cell = cellOf(kind, cells);
    if (cell.isEmpty()) {
      if (kind.isNeeded()) {
        note(cell, "the " + kind.heading() + " is missing in this row");
      }
      return OptionalDouble.empty();
    }
    OptionalDouble number = numbers.read(kind.heading(), cell);
    if (number.isEmpty()) {
      return number;
    }
    double si = column.get().toSi(number.getAsDouble(), densityKgPerM3);
    if (si < 0) {
      note(
          cell,
          "%s %s is negative; it must be 0 or more"
              .formatted(kind.heading(), PlainText.quoted(cell.text())));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(si);
  }

  /** The cell of a column that the header has; an empty one where the row is too short. */
  private Cell cellOf(ColumnKind kind, List<Cell> cells) {
    int index = header.columns().get(kind).index();
    Cell last = cells.get(cells.size() - 1);
    return index < cells.size()
        ? cells.get(index)
        : new Cell(last.line(), last.column() + last.text().length(), "");
  }

  private void note(Cell cell, String message) {
    faults.add(cell.line(), cell.column(), message);
  }
}
