package rillwright.cli.report.text;

import java.util.List;

/** What was changed on the command line, so that nobody takes the answer for the file's. */
public final class ChangedWords {
  private ChangedWords() {}

  /** Tells the changes, if there are any. */
  public static void print(List<String> changes, Page page) {
    if (!changes.isEmpty()) {
      page.blank();
      changes.forEach(change -> page.marked("! ", "Changed for this answer: " + change));
    }
  }
}
