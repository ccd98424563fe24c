package rillwright.cli.report.page;

import rillwright.curves.wording.PlainText;

/**
 * A paragraph.
 *
 * @param mark before it, with a space after it: "! " for what needs care; empty for none
 * @param text of it
 */
public record Line(String mark, String text) {
  public Line {
    text = PlainText.harmless(text);
  }
}
