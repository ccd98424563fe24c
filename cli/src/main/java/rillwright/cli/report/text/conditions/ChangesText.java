package rillwright.cli.report.text.conditions;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.cli.report.conditions.Case;
import rillwright.cli.report.conditions.Cases;
import rillwright.cli.report.conditions.NamedCondition;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.text.TextTable;
import rillwright.cli.report.text.TextTable.Side;

/** What conditions change in the file, and where they come from. */
public final class ChangesText {
  private ChangesText() {}

  /** A row for each condition. */
  public static TextTable table(List<NamedCondition> conditions) {
    TextTable table = new TextTable("WHAT CHANGES").column("in the file", Side.LEFT);
    for (NamedCondition condition : conditions) {
      String changes =
          condition.changes().stream()
              .map(change -> change.quantity() + " " + change.value())
              .collect(Collectors.joining("; "));
      table.row(condition.name(), changes.isEmpty() ? "nothing" : changes);
    }
    return table;
  }

  /** Why there is no balance, in each condition where there is none. */
  public static void noBalance(Cases<?> answer, Page page) {
    for (Case<?> one : answer.cases()) {
      one.noBalance().ifPresent(why -> page.marked("! ", "In \"" + one.condition() + "\": " + why));
    }
  }

  /** Says that the file names no conditions. */
  public static void offer(Page page) {
    page.paragraph(
        "The file names no conditions, so these are offered; their numbers are common practice,"
            + " no source. Write your own into it, for example \"conditions: {autumn: {lines:"
            + " {intake: {skimmer: {clogged: 40 %}}}}}\".");
  }
}
