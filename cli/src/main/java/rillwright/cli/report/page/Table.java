package rillwright.cli.report.page;

import java.util.List;
import rillwright.curves.wording.PlainText;

/**
 * A table with a name in front of each row.
 *
 * @param heading over the names
 * @param longestName characters that a name may take at most before its row in fixed columns
 * @param columns beside the names
 * @param rows each with as many cells as there are columns
 */
public record Table(String heading, int longestName, List<Column> columns, List<Row> rows)
    implements Head {
  public Table {
    heading = PlainText.harmless(heading);
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    for (Row row : rows) {
      if (row.cells().size() != columns.size()) {
        throw new IllegalArgumentException(
            "a row of "
                + row.cells().size()
                + " cells in a table of "
                + columns.size()
                + " columns");
      }
    }
  }

  /** Where the cells of a column stand. */
  public enum Side {
    LEFT,
    RIGHT
  }

  /** A column: its heading and where its cells stand. */
  public record Column(Cell heading, Side side) {}

  /** A row: its name and cells. */
  public record Row(String name, List<Cell> cells) {
    public Row {
      name = PlainText.harmless(name);
      cells = List.copyOf(cells);
    }
  }
}
