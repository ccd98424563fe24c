package rillwright.curves.sheet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.curves.sheet.text.Cell;
import rillwright.curves.unit.Unit;

/**
 * One heading, taken apart: {@code flow [gph]}, {@code Q (m3/h)}.
 *
 * @param cell where it stands
 * @param name before the brackets
 * @param unitText between the brackets, square or round, if there are any
 */
record Heading(Cell cell, String name, Optional<String> unitText) {
  private static final Pattern PARTS =
      Pattern.compile("([^\\[(]*)(?:\\[([^\\]]*)\\]?|\\(([^)]*)\\))\\s*");

  static Heading of(Cell cell) {
    Matcher parts = PARTS.matcher(cell.text());
    if (!parts.matches()) {
      return new Heading(cell, cell.text(), Optional.empty());
    }
    String unit = parts.group(2) == null ? parts.group(3) : parts.group(2);
    return new Heading(cell, parts.group(1).strip(), Optional.of(unit.strip()));
  }

  Optional<Unit> unit() {
    return unitText.flatMap(Unit::find);
  }
}
