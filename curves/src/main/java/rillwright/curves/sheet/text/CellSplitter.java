package rillwright.curves.sheet.text;

import java.util.ArrayList;
import java.util.List;
import rillwright.curves.sheet.fault.FaultList;

/**
 * Splits lines into cells. A cell may stand in double quotes, a quote in it written twice (RFC
 * 4180, Common Format and MIME Type for CSV Files, 2005, section 2), but ends with its line.
 */
public final class CellSplitter {
  private final Separator separator;
  private final FaultList faults;

  /**
   * A splitter for one sheet.
   *
   * @param separator between cells
   * @param faults where to note a quote that does not end
   */
  public CellSplitter(Separator separator, FaultList faults) {
    this.separator = separator;
    this.faults = faults;
  }

  /** The cells of a line, at least one. */
  public List<Cell> cellsOf(SheetLine line) {
    List<Cell> cells = new ArrayList<>();
    String text = line.text();
    int at = 0;
    while (true) {
      int start = skipBlanks(text, at);
      boolean isQuoted = start < text.length() && text.charAt(start) == '"';
      int quoteEnd = isQuoted ? endOfQuote(text, start) : start;
      int end = text.indexOf(separator.character(), quoteEnd);
      end = end < 0 ? text.length() : end;
      cells.add(isQuoted ? quotedCell(line, start, quoteEnd, end) : plainCell(line, start, end));
      if (end == text.length()) {
        return cells;
      }
      at = end + 1;
    }
  }

  /** A comment line as one cell, without the separators that a spreadsheet puts after it. */
  public Cell commentOf(SheetLine line) {
    int start = skipBlanks(line.text(), 0);
    if (line.text().charAt(start) == '"') {
      return cellsOf(line).get(0);
    }
    int end = line.text().length();
    while (isBlankOrSeparator(line.text().charAt(end - 1))) {
      end--;
    }
    return plainCell(line, start, end);
  }

  private boolean isBlankOrSeparator(char character) {
    return Character.isWhitespace(character) || character == separator.character();
  }

  private int skipBlanks(String text, int from) {
    int at = from;
    while (at < text.length()
        && text.charAt(at) != separator.character()
        && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** Index after the closing quote, or the text's length if there is none. */
  private static int endOfQuote(String text, int start) {
    int at = start + 1;
    while (at < text.length()) {
      if (text.charAt(at) != '"') {
        at++;
      } else if (text.startsWith("\"\"", at)) {
        at += 2;
      } else {
        return at + 1;
      }
    }
    return text.length();
  }

  private Cell plainCell(SheetLine line, int start, int end) {
    return new Cell(line.number(), line.columnAt(start), line.text().substring(start, end).strip());
  }

  private Cell quotedCell(SheetLine line, int start, int quoteEnd, int end) {
    String inside = line.text().substring(start + 1, quoteEnd);
    boolean closed = inside.replace("\"\"", "").endsWith("\"");
    if (!closed) {
      faults.add(line.number(), line.columnAt(start), "a quote (\") begins here and does not end");
    } else if (!line.text().substring(quoteEnd, end).isBlank()) {
      faults.add(
          line.number(),
          line.columnAt(quoteEnd),
          "something follows a closing quote (\"); write a quote inside a cell twice");
    }
    String text = closed ? inside.substring(0, inside.length() - 1) : inside;
    return new Cell(line.number(), line.columnAt(start + 1), text.replace("\"\"", "\"").strip());
  }
}
