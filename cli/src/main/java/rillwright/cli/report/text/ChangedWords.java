package rillwright.cli.report.text;

import java.util.List;

/** What was changed on the command line, so that nobody takes the answer for the file's. */
public final class ChangedWords {
  private ChangedWords() {}

  /** A change in a sentence of its own, as written. */
  public static String of(String change) {
    return "Changed for this answer: " + change;
  }

  /** Tells the changes, if there are any. */
  public static void print(List<String> changes, Page page) {
    if (!changes.isEmpty()) {
      page.blank();
      changes.forEach(change -> page.marked("! ", of(change)));
    }
  }
}
