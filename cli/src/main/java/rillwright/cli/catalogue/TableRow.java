package rillwright.cli.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;

/**
 * A row of a catalogue table.
 *
 * @param place file and line, for messages
 * @param columns names of the columns
 * @param cells one a column
 * @param sources the table's sources by their key
 */
record TableRow(
    String place, List<String> columns, List<String> cells, Map<String, String> sources) {
  private static final String NONE = "-";

  private static final Pattern FROM_MEMORY =
      Pattern.compile(" \\(from memory\\)|from memory; |;? from memory");

  TableRow {
    if (columns.size() != cells.size()) {
      throw new IllegalStateException(
          place + ": " + cells.size() + " cells; there are " + columns.size() + " columns");
    }
  }

  /** A cell's words. */
  String text(String column) {
    int at = columns.indexOf(column);
    if (at < 0 || cells.get(at).isBlank()) {
      throw new IllegalStateException(place + ": nothing in column \"" + column + "\"");
    }
    return cells.get(at).strip();
  }

  /** A cell's plain number. */
  double number(String column) {
    try {
      return Double.parseDouble(text(column));
    } catch (NumberFormatException e) {
      throw new IllegalStateException(place + ": \"" + text(column) + "\" is not a number", e);
    }
  }

  /** A cell's share, {@code 15 %} as 0.15. */
  double share(String column) {
    String words = text(column);
    if (!words.endsWith(" %")) {
      throw new IllegalStateException(place + ": \"" + words + "\" is not a share in %");
    }
    return Double.parseDouble(words.substring(0, words.length() - 2)) / 100;
  }

  /** A cell's length, m. */
  double lengthM(String column) {
    return Spelling.lengthM(text(column))
        .orElseThrow(
            () -> new IllegalStateException(place + ": \"" + text(column) + "\" is not a length"));
  }

  /** A cell's length, m; empty where it holds a dash. */
  Optional<Double> lengthIfAnyM(String column) {
    return text(column).equals(NONE) ? Optional.empty() : Optional.of(lengthM(column));
  }

  /** A cell's plain number; empty where it holds a dash. */
  Optional<Double> numberIfAny(String column) {
    return text(column).equals(NONE) ? Optional.empty() : Optional.of(number(column));
  }

  /** A cell's pressure, {@code 280 psi} or {@code 10 bar}, Pa; empty where it holds a dash. */
  Optional<Double> pressureIfAnyPa(String column) {
    String words = text(column);
    if (words.equals(NONE)) {
      return Optional.empty();
    }
    int blank = words.indexOf(' ');
    return Unit.find(words.substring(blank + 1))
        .filter(unit -> unit.dimension() == Dimension.PRESSURE)
        .map(unit -> unit.toSi(Double.parseDouble(words.substring(0, blank))));
  }

  /**
   * Where the row is from: its sources in full, joined by semicolons. A source that was not seen
   * says in the table that it is from memory, for those who are to check it; that is not shown.
   */
  String source() {
    List<String> found = new ArrayList<>();
    for (String key : text("source").split("\\+")) {
      String source = sources.get(key);
      if (source == null) {
        throw new IllegalStateException(place + ": source \"" + key + "\" is not defined");
      }
      found.add(FROM_MEMORY.matcher(source).replaceAll(""));
    }
    return String.join("; ", found);
  }
}
