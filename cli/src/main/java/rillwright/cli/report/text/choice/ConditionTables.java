package rillwright.cli.report.text.choice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.text.conditions.ChangesText;
import rillwright.cli.report.units.NearLimit;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.cli.study.condition.JudgingConditions.InTheWay;
import rillwright.cli.study.condition.NamedCondition;
import rillwright.curves.wording.PlainText;
import rillwright.solver.steady.PointState;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.Verdict;

/** What the worst fall gets of its target with each choice in each condition. */
final class ConditionTables {
  /** Letters that the names of the conditions in one table may have together. */
  private static final int MOST_LETTERS = 66;

  private static final int GAP = 2;

  private final JudgingConditions judging;
  private final ShownUnits units;
  private final PageBuilder page;
  private final Map<String, List<Gets>> rows = new LinkedHashMap<>();

  /**
   * What the worst fall gets in a condition.
   *
   * @param balanced whether there is a balance
   * @param starved whether a chamber is drawn down to its intake then
   */
  record Gets(boolean balanced, boolean starved, double share, boolean meetsTargets) {}

  ConditionTables(JudgingConditions judging, ShownUnits units, PageBuilder page) {
    this.judging = judging;
    this.units = units;
    this.page = page;
  }

  void row(String name, RatedTrial rated) {
    row(
        name,
        rated.conditions().stream()
            .map(
                it ->
                    new Gets(
                        it.trial().isPresent(),
                        it.trial().stream()
                            .flatMap(trial -> trial.state().points().stream())
                            .anyMatch(PointState::isStarved),
                        it.leastFraction(),
                        it.meetsTargets()))
            .toList());
  }

  /** A row with a cell for each condition, in their order. */
  void row(String name, List<Gets> gets) {
    rows.put(name, gets);
  }

  void print() {
    int first = 0;
    while (first < judging.conditions().size()) {
      int end = end(first);
      page.table(shares(first, end));
      first = end;
    }
    if (rows.values().stream().flatMap(List::stream).anyMatch(Gets::starved)) {
      page.paragraph(
          "\"s\": with the valves as they stand no more comes in than this, and the chamber is"
              + " drawn"
              + " down to the pump's intake.");
    }
    page.table(ChangesText.table(judging.conditions()));
  }

  /** The first condition that no longer fits beside the first. */
  private int end(int first) {
    int letters = 0;
    int end = first;
    for (NamedCondition condition :
        judging.conditions().subList(first, judging.conditions().size())) {
      letters += condition.name().length() + GAP;
      if (letters > MOST_LETTERS && end > first) {
        return end;
      }
      end++;
    }
    return end;
  }

  private TableBuilder shares(int first, int end) {
    TableBuilder table = new TableBuilder("IN CONDITIONS");
    judging
        .conditions()
        .subList(first, end)
        .forEach(condition -> table.column(condition.name(), Side.RIGHT));
    rows.forEach(
        (name, gets) ->
            table.row(name, gets.subList(first, end).stream().map(this::cell).toList()));
    return table;
  }

  private Cell cell(Gets tried) {
    boolean isEnough = tried.share() >= Verdict.JUST_SHORT_SHARE;
    String share =
        !tried.balanced()
            ? "no balance"
            : isEnough
                ? units.share(tried.share())
                : NearLimit.below(tried.share(), Verdict.JUST_SHORT_SHARE, units);
    return tried.meetsTargets()
        ? new Cell((isEnough ? "" : "t ") + (tried.starved() ? "s " : "") + share, Tone.GOOD)
        : new Cell("! " + (tried.starved() ? "s " : "") + share, Tone.WARNING);
  }

  private static String words(InTheWay change) {
    return PlainText.quoted(change.condition())
        + ": "
        + change.changed().quantity()
        + " "
        + change.changed().value();
  }

  /** Says how the conditions judge. */
  static void note(JudgingConditions judging, PageBuilder page) {
    page.paragraph(
        "\"In conditions\" is the fraction of its target that the lowest fall gets with the valves"
            + " as they stand. \"t\" marks less than 95 % that becomes enough once the falls that"
            + " get more are throttled, \"!\" what stays too little. Throttled, its valves are"
            + " set anew in each condition. A candidate"
            + " meets the target only if it does in every condition; the lowest gives the verdict."
            + " Flows, heads, watts, energy and cost elsewhere are of the file as written.");
    if (!judging.inTheWay().isEmpty()) {
      page.marked(
          "! ",
          "What is tried here takes the place of what a condition sets, which does not count: "
              + judging.inTheWay().stream()
                  .map(ConditionTables::words)
                  .collect(Collectors.joining("; "))
              + ".");
    }
    if (judging.offered()) {
      ChangesText.offer(page);
    }
  }
}
