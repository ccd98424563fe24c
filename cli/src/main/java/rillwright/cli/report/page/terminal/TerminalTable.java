package rillwright.cli.report.page.terminal;

import java.util.Arrays;
import java.util.List;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Table;
import rillwright.cli.report.page.Table.Row;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.Tone;

/**
 * A table in columns. A name too long for its column stands on a line of its own, so does a heading
 * that would push the columns aside; the last column takes what is left of the page and is wrapped,
 * or stands on lines of its own below each row where too little is left to read it.
 */
final class TerminalTable {
  private static final String GAP = "  ";
  private static final int NARROWEST = 10;
  private static final int READABLE = 28;
  private static final int MOST_LINES = 4;
  private static final String BELOW = TerminalPage.INDENT.repeat(3);
  private static final int LONGEST_HEADING = 40;

  private final Table table;
  private final Screen screen;
  private final boolean headed;
  private final int nameWidth;
  private final int[] widths;
  private final boolean below;

  TerminalTable(Table table, Screen screen) {
    this.table = table;
    this.screen = screen;
    this.headed = Wrapping.width(table.heading()) > LONGEST_HEADING;
    this.nameWidth =
        table.rows().stream()
            .mapToInt(row -> Wrapping.width(row.name()))
            .filter(width -> width <= table.longestName())
            .reduce(
                headed ? 0 : Wrapping.width(table.heading()) - TerminalPage.INDENT.length(),
                Math::max);
    this.widths = widths();
    this.below = isTooNarrow();
  }

  private boolean isTooNarrow() {
    int last = widths.length - 1;
    return last > 0
        && widths[last] < READABLE
        && table.rows().stream()
            .map(row -> Wrapping.lines(row.cells().get(last).text(), widths[last]))
            .anyMatch(lines -> lines.size() > MOST_LINES);
  }

  void print(StringBuilder page) {
    if (screen.isNarrow() && columnsTaken() > screen.columns()) {
      printBelow(page);
      return;
    }
    String start = headed ? "" : table.heading();
    if (headed) {
      page.append(screen.ink().paint(table.heading(), Tone.HEADING)).append('\n');
    }
    String heading = Wrapping.padded(start, nameWidth + TerminalPage.INDENT.length());
    page.append(screen.ink().paint(heading, Tone.HEADING));
    cells(page, table.columns().stream().map(Table.Column::heading).toList());
    for (Row row : table.rows()) {
      page.append(TerminalPage.INDENT);
      String name = row.name();
      if (Wrapping.width(name) > nameWidth) {
        List<String> lines = Wrapping.lines(name, screen.columns() - TerminalPage.INDENT.length());
        page.append(String.join("\n" + TerminalPage.INDENT, lines))
            .append('\n')
            .append(TerminalPage.INDENT);
        name = "";
      }
      page.append(Wrapping.padded(name, nameWidth));
      cells(page, row.cells());
      if (below) {
        below(page, widths.length - 1, row.cells().get(widths.length - 1));
      }
    }
  }

  private int columnsTaken() {
    return TerminalPage.INDENT.length()
        + nameWidth
        + Arrays.stream(widths).map(width -> width + GAP.length()).sum();
  }

  /** On a screen too narrow for its columns: the cells of a row one below the other. */
  private void printBelow(StringBuilder page) {
    page.append(screen.ink().paint(table.heading(), Tone.HEADING)).append('\n');
    for (Row row : table.rows()) {
      int room = screen.columns() - TerminalPage.INDENT.length();
      for (String line : Wrapping.lines(row.name(), room)) {
        page.append(TerminalPage.INDENT).append(line).append('\n');
      }
      for (int i = 0; i < widths.length; i++) {
        if (!row.cells().get(i).text().isEmpty()) {
          below(page, i, row.cells().get(i));
        }
      }
    }
  }

  private void below(StringBuilder page, int column, Cell cell) {
    String heading = table.columns().get(column).heading().text();
    String text = heading.isEmpty() ? cell.text() : heading + ": " + cell.text();
    for (String line : Wrapping.lines(text, screen.columns() - BELOW.length())) {
      page.append(BELOW).append(screen.ink().paint(line, cell.tone())).append('\n');
    }
  }

  private int[] widths() {
    int[] all = new int[table.columns().size()];
    int left = screen.columns() - TerminalPage.INDENT.length() - nameWidth;
    for (int i = 0; i < all.length; i++) {
      all[i] = Wrapping.width(table.columns().get(i).heading().text());
      for (Row row : table.rows()) {
        all[i] = Math.max(all[i], Wrapping.width(row.cells().get(i).text()));
      }
      left -= GAP.length();
      boolean last = i == all.length - 1;
      all[i] = last ? Math.max(NARROWEST, Math.min(left, all[i])) : all[i];
      left -= all[i];
    }
    return all;
  }

  private void cells(StringBuilder page, List<Cell> cells) {
    StringBuilder row = new StringBuilder();
    int column = TerminalPage.INDENT.length() + nameWidth;
    int last = cells.size() - 1;
    for (int i = 0; i < last; i++) {
      row.append(GAP).append(painted(cells.get(i), widths[i], side(i)));
      column += GAP.length() + widths[i];
    }
    String before = "";
    for (String line :
        below ? List.<String>of() : Wrapping.lines(cells.get(last).text(), widths[last])) {
      int width = side(last) == Side.RIGHT ? widths[last] : 0;
      row.append(before).append(GAP);
      row.append(painted(new Cell(line, cells.get(last).tone()), width, side(last)));
      before = "\n" + " ".repeat(column);
    }
    page.append(row.toString().stripTrailing()).append('\n');
  }

  private Side side(int column) {
    return table.columns().get(column).side();
  }

  private String painted(Cell cell, int width, Side side) {
    String text = cell.tone() == Tone.AGAIN ? "" : cell.text();
    String spaces = " ".repeat(Math.max(0, width - Wrapping.width(text)));
    String painted = text.isEmpty() ? "" : screen.ink().paint(text, cell.tone());
    return side == Side.RIGHT ? spaces + painted : painted + spaces;
  }
}
