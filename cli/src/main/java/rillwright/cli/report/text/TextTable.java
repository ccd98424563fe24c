package rillwright.cli.report.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rillwright.cli.report.text.Ink.Tone;
import rillwright.curves.wording.PlainText;

/**
 * A table with a name in front of each row. A name too long for its column stands on a line of its
 * own; the last column takes what is left of the page and is wrapped.
 */
public final class TextTable {
  private static final String GAP = "  ";
  private static final int LONGEST_NAME = 20;

  /** Where the cells of a column stand. */
  public enum Side {
    LEFT,
    RIGHT
  }

  /** A cell: its text and what it is. */
  public record Cell(String text, Tone tone) {
    public Cell {
      text = PlainText.harmless(text);
    }

    /** Plain text. */
    public static Cell of(String text) {
      return new Cell(text, Tone.PLAIN);
    }
  }

  private record Row(String name, List<Cell> cells) {}

  private final String heading;
  private final int longestName;
  private final List<Cell> headings = new ArrayList<>();
  private final List<Side> sides = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  /** A table without columns. */
  public TextTable(String heading) {
    this(heading, LONGEST_NAME);
  }

  /**
   * A table without columns.
   *
   * @param longestName columns that a name may take at most before its row
   */
  public TextTable(String heading, int longestName) {
    this.heading = heading;
    this.longestName = longestName;
  }

  /** Adds a column. */
  public TextTable column(String columnHeading, Side side) {
    headings.add(Cell.of(columnHeading));
    sides.add(side);
    return this;
  }

  /** Adds a row of plain cells, as many as there are columns. */
  public void row(String name, String... cells) {
    row(name, Arrays.stream(cells).map(Cell::of).toList());
  }

  /** Adds a row, with as many cells as there are columns. */
  public void row(String name, List<Cell> cells) {
    if (cells.size() != headings.size()) {
      throw new IllegalArgumentException(
          "a row of " + cells.size() + " cells in a table of " + headings.size() + " columns");
    }
    rows.add(new Row(PlainText.harmless(name), List.copyOf(cells)));
  }

  /** Whether it has no rows. */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  void print(StringBuilder page, Ink ink) {
    int nameWidth = Wrapping.width(heading) - Page.INDENT.length();
    for (Row row : rows) {
      int width = Wrapping.width(row.name());
      nameWidth = width <= longestName ? Math.max(nameWidth, width) : nameWidth;
    }
    int[] widths = widths(nameWidth);
    page.append(ink.paint(Wrapping.padded(heading, nameWidth + 2, false), Tone.HEADING));
    printCells(page, ink, headings, widths, nameWidth);
    for (Row row : rows) {
      page.append(Page.INDENT);
      String name = row.name();
      if (Wrapping.width(name) > nameWidth) {
        List<String> lines = Wrapping.lines(name, Page.WIDTH - Page.INDENT.length());
        page.append(String.join("\n" + Page.INDENT, lines)).append('\n').append(Page.INDENT);
        name = "";
      }
      page.append(Wrapping.padded(name, nameWidth, false));
      printCells(page, ink, row.cells(), widths, nameWidth);
    }
  }

  private int[] widths(int nameWidth) {
    int[] widths = new int[headings.size()];
    int left = Page.WIDTH - Page.INDENT.length() - nameWidth;
    for (int i = 0; i < widths.length; i++) {
      widths[i] = Wrapping.width(headings.get(i).text());
      for (Row row : rows) {
        widths[i] = Math.max(widths[i], Wrapping.width(row.cells().get(i).text()));
      }
      left -= GAP.length();
      boolean last = i == widths.length - 1;
      widths[i] = last ? Math.max(10, Math.min(left, widths[i])) : widths[i];
      left -= widths[i];
    }
    return widths;
  }

  private void printCells(
      StringBuilder page, Ink ink, List<Cell> cells, int[] widths, int nameWidth) {
    StringBuilder before = new StringBuilder();
    int column = Page.INDENT.length() + nameWidth;
    for (int i = 0; i < cells.size() - 1; i++) {
      before.append(GAP).append(painted(ink, cells.get(i), widths[i], sides.get(i)));
      column += GAP.length() + widths[i];
    }
    int last = cells.size() - 1;
    Cell cell = cells.get(last);
    List<String> lines = Wrapping.lines(cell.text(), widths[last]);
    StringBuilder row = new StringBuilder(before);
    String indent = " ".repeat(column);
    for (int i = 0; i < lines.size(); i++) {
      row.append(i == 0 ? "" : "\n" + indent).append(GAP);
      Cell line = new Cell(lines.get(i), cell.tone());
      row.append(
          painted(ink, line, sides.get(last) == Side.RIGHT ? widths[last] : 0, sides.get(last)));
    }
    page.append(row.toString().stripTrailing()).append('\n');
  }

  private static String painted(Ink ink, Cell cell, int width, Side side) {
    String spaces = " ".repeat(Math.max(0, width - Wrapping.width(cell.text())));
    String text = cell.text().isEmpty() ? "" : ink.paint(cell.text(), cell.tone());
    return side == Side.RIGHT ? spaces + text : text + spaces;
  }
}
