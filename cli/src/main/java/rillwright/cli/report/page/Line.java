package rillwright.cli.report.page;

import rillwright.curves.wording.PlainText;

/**
 * A paragraph.
 *
 * @param mark before it, with a space after it: "! " for what needs care; empty for none
 * @param text of it
 * @param live what the live page says instead, where commands and options are of no use; empty to
 *     say nothing there
 */
public record Line(String mark, String text, String live) {
  public Line {
    text = PlainText.harmless(text);
    live = PlainText.harmless(live);
  }

  /** A paragraph that is the same everywhere. */
  public Line(String mark, String text) {
    this(mark, text, text);
  }
}
