package rillwright.cli.report.text;

import java.util.List;
import rillwright.cli.report.text.Ink.Tone;
import rillwright.curves.wording.PlainText;

/** A page that is written from top to bottom, at most 100 columns wide. */
public final class Page {
  /** Columns of a page. */
  public static final int WIDTH = 100;

  static final String INDENT = "  ";

  private final StringBuilder text = new StringBuilder();
  private final Ink ink;

  /** An empty page. */
  public Page(Ink ink) {
    this.ink = ink;
  }

  /** The title of the page. */
  public void title(String title) {
    List<String> lines = Wrapping.lines(PlainText.harmless(title), WIDTH);
    int longest = 1;
    for (String line : lines) {
      add(line, Tone.HEADING);
      longest = Math.max(longest, Wrapping.width(line));
    }
    add("=".repeat(longest), Tone.HEADING);
  }

  /** A heading, with an empty line before it. */
  public void heading(String heading) {
    blank();
    add(PlainText.harmless(heading), Tone.HEADING);
  }

  /** An empty line. */
  public void blank() {
    text.append('\n');
  }

  /** An indented paragraph. */
  public void paragraph(String paragraph) {
    marked("", paragraph);
  }

  /** An indented paragraph with a mark before its first line. */
  public void marked(String mark, String paragraph) {
    String before = INDENT + mark;
    String indent = " ".repeat(Wrapping.width(before));
    int width = WIDTH - Wrapping.width(before);
    boolean first = true;
    for (String line : Wrapping.lines(PlainText.harmless(paragraph), width)) {
      text.append(first ? INDENT + ink.paint(mark, Tone.WARNING) : indent);
      add(line, Tone.PLAIN);
      first = false;
    }
  }

  /** A table, with an empty line before it. */
  public void table(TextTable table) {
    blank();
    table.print(text, ink);
  }

  private void add(String line, Tone tone) {
    text.append(ink.paint(line, tone)).append('\n');
  }

  /** All that was written. */
  @Override
  public String toString() {
    return text.toString();
  }
}
