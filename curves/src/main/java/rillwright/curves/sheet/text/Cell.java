package rillwright.curves.sheet.text;

/**
 * One cell of a row.
 *
 * @param line from 1
 * @param column where its text begins in the line, in characters from 1
 * @param text without quotes and blanks around it
 */
public record Cell(int line, int column, String text) {
  /** Whether it is empty. */
  public boolean isEmpty() {
    return text.isEmpty();
  }
}
