package rillwright.cli.report.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import rillwright.cli.report.page.Table.Column;
import rillwright.cli.report.page.Table.Row;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.units.Decimals;

/** Gathers the columns and rows of a table. */
public final class TableBuilder {
  private static final int LONGEST_NAME = 20;

  private final String heading;
  private final int longestName;
  private final List<Column> columns = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  /** A table without columns. */
  public TableBuilder(String heading) {
    this(heading, LONGEST_NAME);
  }

  /**
   * A table without columns.
   *
   * @param longestName characters that a name may take at most before its row in fixed columns
   */
  public TableBuilder(String heading, int longestName) {
    this.heading = heading;
    this.longestName = longestName;
  }

  /** Adds a column. */
  public TableBuilder column(String columnHeading, Side side) {
    columns.add(new Column(Cell.of(columnHeading), side));
    return this;
  }

  /** Adds a row of plain cells, as many as there are columns. */
  public void row(String name, String... cells) {
    row(name, Arrays.stream(cells).map(Cell::of).toList());
  }

  /** Adds a row of a cell and plain ones, as many as there are columns. */
  public void row(String name, Cell first, String... others) {
    row(name, Stream.concat(Stream.of(first), Arrays.stream(others).map(Cell::of)).toList());
  }

  /** Adds a row, with as many cells as there are columns. */
  public void row(String name, List<Cell> cells) {
    rows.add(new Row(name, cells));
  }

  /** Whether it has no rows. */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /** What was gathered, the figures of each column with one number of decimals. */
  public Table build() {
    List<List<Cell>> cells = new ArrayList<>();
    rows.forEach(row -> cells.add(new ArrayList<>(row.cells())));
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).side() == Side.RIGHT) {
        int column = i;
        List<String> alike =
            Decimals.alike(rows.stream().map(row -> row.cells().get(column).text()).toList());
        for (int j = 0; j < alike.size(); j++) {
          cells.get(j).set(i, new Cell(alike.get(j), cells.get(j).get(i).tone()));
        }
      }
    }
    List<Row> shown = new ArrayList<>();
    for (int j = 0; j < rows.size(); j++) {
      shown.add(new Row(rows.get(j).name(), cells.get(j)));
    }
    return new Table(heading, longestName, columns, shown);
  }
}
