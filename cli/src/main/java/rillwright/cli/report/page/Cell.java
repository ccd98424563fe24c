package rillwright.cli.report.page;

import rillwright.curves.wording.PlainText;

/**
 * A cell of a table.
 *
 * @param text in it
 * @param tone what it is
 */
public record Cell(String text, Tone tone) {
  public Cell {
    text = PlainText.harmless(text);
  }

  /** Plain text. */
  public static Cell of(String text) {
    return new Cell(text, Tone.PLAIN);
  }

  /** A blank to write in. */
  public static Cell toWrite() {
    return new Cell("________", Tone.TO_WRITE);
  }
}
