package rillwright.curves.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.curves.sheet.fact.FactReader;
import rillwright.curves.sheet.fact.FactValues;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.curves.sheet.fault.FaultList;
import rillwright.curves.sheet.fault.SheetFaults;
import rillwright.curves.sheet.text.Cell;
import rillwright.curves.sheet.text.CellSplitter;
import rillwright.curves.sheet.text.NumberReader;
import rillwright.curves.sheet.text.Separator;
import rillwright.curves.sheet.text.SheetLine;
import rillwright.curves.sheet.text.SheetText;
import rillwright.solver.law.pump.PumpCurve;

/** Reads pumps' data sheets; what is wrong with one is reported all at once. */
public final class DataSheetReader {
  private final double densityKgPerM3;

  /**
   * A reader.
   *
   * @param densityKgPerM3 of the water in which heads given as pressures are stated, above 0
   */
  public DataSheetReader(double densityKgPerM3) {
    if (!(densityKgPerM3 > 0) || Double.isInfinite(densityKgPerM3)) {
      throw new IllegalArgumentException(
          "density is " + densityKgPerM3 + " kg/m3; it must be above 0");
    }
    this.densityKgPerM3 = densityKgPerM3;
  }

  /**
   * The pump that a data sheet describes.
   *
   * @param nameForMessages such as the file's
   * @param content all bytes of the sheet
   * @throws SheetFaults with everything that is wrong, if anything is
   */
  public DataSheet read(String nameForMessages, byte[] content) throws SheetFaults {
    FaultList faults = new FaultList();
    List<SheetLine> lines = SheetText.linesOf(content, faults);
    faults.throwIfAny(nameForMessages);
    List<SheetLine> rows =
        lines.stream()
            .filter(line -> !line.isBlank() && !line.isComment() && !isMarkOfSpreadsheets(line))
            .toList();
    if (rows.isEmpty()) {
      faults.add(
          1,
          1,
          "the sheet is empty; write headings such as \"flow [gph],head [ft],power [W]\" and the"
              + " points of the curve below them");
    }
    faults.throwIfAny(nameForMessages);
    SheetLine headings = rows.get(0);
    Separator separator = Separator.of(headings.text());
    CellSplitter splitter = new CellSplitter(separator, faults);
    NumberReader numbers = new NumberReader(separator, faults);
    FactReader factReader = new FactReader(new FactValues(numbers, faults), faults);
    lines.stream()
        .filter(SheetLine::isComment)
        .forEach(line -> factReader.take(splitter.commentOf(line)));
    SheetFacts facts = factReader.facts();
    Optional<Header> header = new HeaderReader(numbers, faults).read(splitter.cellsOf(headings));
    List<Row> points = new ArrayList<>();
    if (header.isPresent()) {
      RowReader reader = new RowReader(header.get(), densityKgPerM3, numbers, faults);
      List<List<Cell>> cells = rows.stream().skip(1).map(splitter::cellsOf).toList();
      points.addAll(pointsOf(cells, reader, headings.number(), faults));
    }
    faults.throwIfAny(nameForMessages);
    List<Row> ordered = CurveRules.inOrder(points, Row::written);
    return new DataSheet(
        nameForMessages,
        new PumpCurve(ordered.stream().map(row -> row.written().point()).toList()),
        facts,
        header.orElseThrow().passedOver(),
        !ordered.equals(points),
        header.map(Header::units));
  }

  /** Some spreadsheets write {@code sep=;} first; what stands between cells shows by itself. */
  private static boolean isMarkOfSpreadsheets(SheetLine line) {
    return line.number() == 1 && line.text().strip().matches("(?i)\"?sep=[;,]\"?[;,]*");
  }

  /** All rows that are not empty. */
  private static List<Row> pointsOf(
      List<List<Cell>> rows, RowReader reader, int headingsLine, FaultList faults) {
    List<Row> read = new ArrayList<>();
    boolean allRead = true;
    for (List<Cell> cells : rows) {
      if (!cells.stream().allMatch(Cell::isEmpty)) {
        Optional<Row> row = reader.read(cells);
        row.ifPresent(read::add);
        allRead &= row.isPresent();
      }
    }
    List<Row> ordered = CurveRules.inOrder(read, Row::written);
    List<WrittenPoint> written = ordered.stream().map(Row::written).toList();
    CurveRules rules = new CurveRules(faultsOf(ordered, headingsLine, faults));
    rules.checkEach(written);
    if (allRead) {
      rules.checkTogether(written);
    }
    return read;
  }

  private static CurveRules.Faults faultsOf(List<Row> rows, int headingsLine, FaultList faults) {
    return new CurveRules.Faults() {
      @Override
      public void at(int index, String column, String message) {
        Cell cell = rows.get(index).cells().get(column);
        faults.add(cell.line(), cell.column(), column + " " + message);
      }

      @Override
      public void together(String message) {
        faults.add(headingsLine, 1, message);
      }
    };
  }
}
