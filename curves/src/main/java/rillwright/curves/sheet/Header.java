package rillwright.curves.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The line of headings.
 *
 * @param columns those that count
 * @param count of all columns
 * @param passedOver headings of the others
 */
record Header(Map<ColumnKind, Column> columns, int count, List<String> passedOver) {
  Header {
    columns = Map.copyOf(columns);
    passedOver = List.copyOf(passedOver);
  }

  /** Units of the two columns that every sheet has. */
  WrittenUnits units() {
    return new WrittenUnits(
        columns.get(ColumnKind.FLOW).unit(), columns.get(ColumnKind.HEAD).unit());
  }

  Optional<Column> find(ColumnKind kind) {
    return Optional.ofNullable(columns.get(kind));
  }
}
