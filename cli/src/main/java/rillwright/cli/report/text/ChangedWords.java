package rillwright.cli.report.text;

import java.util.List;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.page.PageBuilder;

/** What was changed on the command line, so that nobody takes the answer for the file's. */
public final class ChangedWords {
  private ChangedWords() {}

  /** A change in a sentence of its own, as written. */
  public static String of(String change) {
    return "Changed with --set: " + change;
  }

  /** A page that begins with its title, what it is good for, and the changes, if there are any. */
  public static PageBuilder page(String title, List<String> changes) {
    PageBuilder page = new PageBuilder(title);
    page.paragraph(Estimate.LINE);
    if (!changes.isEmpty()) {
      page.space();
      changes.forEach(change -> page.marked("! ", of(change)));
    }
    return page;
  }
}
