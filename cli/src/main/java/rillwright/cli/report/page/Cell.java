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
}
