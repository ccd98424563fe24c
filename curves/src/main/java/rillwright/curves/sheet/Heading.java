package rillwright.curves.sheet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.curves.sheet.text.Cell;
import rillwright.curves.unit.Unit;

/**
 * One heading, taken apart: {@code flow [gph]}.
 *
 * @param cell where it stands
 * @param name before the brackets
 * @param unitText between the brackets, if there are any
 */
record Heading(Cell cell, String name, Optional<String> unitText) {
  private static final Pattern PARTS = Pattern.compile("([^\\[]*)\\[([^\\]]*)\\]?\\s*");
  private static final Pattern ROUND = Pattern.compile("([^(]*)\\(([^)]*)\\)\\s*");

  static Heading of(Cell cell) {
    Matcher parts = PARTS.matcher(cell.text());
    return parts.matches()
        ? new Heading(cell, parts.group(1).strip(), Optional.of(parts.group(2).strip()))
        : new Heading(cell, cell.text(), Optional.empty());
  }

  Optional<Unit> unit() {
    return unitText.flatMap(Unit::find);
  }

  /** The same with round brackets read as square ones: what was probably meant. */
  Heading withRoundBrackets() {
    Matcher parts = ROUND.matcher(cell.text());
    return unitText.isEmpty() && parts.matches()
        ? new Heading(cell, parts.group(1).strip(), Optional.of(parts.group(2).strip()))
        : this;
  }
}
