package rillwright.cli.report.text.choice;

import java.util.List;
import rillwright.cli.report.text.Page;

/** What was changed on the command line, so that nobody takes the answer for the file's. */
final class ChangedWords {
  private ChangedWords() {}

  static void print(List<String> changes, Page page) {
    if (!changes.isEmpty()) {
      page.blank();
      changes.forEach(change -> page.marked("! ", "Changed for this answer: " + change));
    }
  }
}
