package rillwright.cli.report.text.conditions;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.cli.report.NoBalanceWords;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.condition.NamedCondition;

/** What conditions change in the file, and where they come from. */
public final class ChangesText {
  private ChangesText() {}

  /** A row for each condition. */
  public static TableBuilder table(List<NamedCondition> conditions) {
    TableBuilder table = new TableBuilder("CHANGES").column("in the file", Side.LEFT);
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
  public static void noBalance(Cases<?> answer, PageBuilder page) {
    for (Case<?> one : answer.cases()) {
      one.noBalance()
          .ifPresent(
              why ->
                  page.marked(
                      "! ",
                      "In \""
                          + one.condition()
                          + "\": "
                          + NoBalanceWords.of(why, Shown.of(answer))));
    }
  }

  /** Says that the file names no conditions. */
  public static void offer(PageBuilder page) {
    page.paragraph(
        "The file names no conditions, so built-in ones are used; their numbers are common"
            + " practice, no source. Write your own, for example \"conditions: {autumn: {lines:"
            + " {intake: {skimmer: {clogged: 40 %}}}}}\".");
  }
}
