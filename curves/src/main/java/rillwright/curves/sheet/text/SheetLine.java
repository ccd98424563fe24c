package rillwright.curves.sheet.text;

/**
 * One line of a sheet, without its line end.
 *
 * @param number from 1
 * @param text what stands in it
 */
public record SheetLine(int number, String text) {
  /** The place of a character of this line, counted from 1 as an editor does. */
  int columnAt(int index) {
    return text.codePointCount(0, index) + 1;
  }

  /** Whether nothing but blanks stands in it. */
  public boolean isBlank() {
    return text.isBlank();
  }

  /** Whether it is a comment; a spreadsheet may have put it in quotes. */
  public boolean isComment() {
    String start = text.stripLeading();
    return start.startsWith("#") || start.startsWith("\"#");
  }
}
