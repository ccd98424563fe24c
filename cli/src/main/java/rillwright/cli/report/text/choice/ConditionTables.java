package rillwright.cli.report.text.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.cli.report.conditions.JudgingConditions;
import rillwright.cli.report.conditions.NamedCondition;
import rillwright.cli.report.text.Ink.Tone;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.text.TextTable;
import rillwright.cli.report.text.TextTable.Cell;
import rillwright.cli.report.text.TextTable.Side;
import rillwright.cli.report.text.conditions.ChangesText;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.trial.ConditionTrial;
import rillwright.solver.trial.RatedTrial;

/** What the worst fall gets of its wish with each choice in each condition. */
final class ConditionTables {
  /** Letters that the names of the conditions in one table may have together. */
  private static final int MOST_LETTERS = 66;

  private static final int GAP = 2;

  private final JudgingConditions judging;
  private final ShownUnits units;
  private final Page page;
  private final Map<String, RatedTrial> rows = new LinkedHashMap<>();

  ConditionTables(JudgingConditions judging, ShownUnits units, Page page) {
    this.judging = judging;
    this.units = units;
    this.page = page;
  }

  void row(String name, RatedTrial rated) {
    rows.put(name, rated);
  }

  void print() {
    int first = 0;
    while (first < judging.conditions().size()) {
      int end = end(first);
      page.table(shares(first, end));
      first = end;
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

  private TextTable shares(int first, int end) {
    TextTable table = new TextTable("IN CONDITIONS");
    judging
        .conditions()
        .subList(first, end)
        .forEach(condition -> table.column(condition.name(), Side.RIGHT));
    rows.forEach(
        (name, rated) -> {
          List<Cell> cells = new ArrayList<>();
          rated.conditions().subList(first, end).forEach(tried -> cells.add(cell(tried)));
          table.row(name, cells);
        });
    return table;
  }

  private Cell cell(ConditionTrial tried) {
    String share = tried.trial().isPresent() ? units.share(tried.worstShare()) : "no balance";
    return new Cell(tried.does() ? share : "! " + share, tried.does() ? Tone.GOOD : Tone.WARNING);
  }

  /** Says how the conditions judge. */
  static void note(JudgingConditions judging, Page page) {
    page.paragraph(
        "\"In conditions\" is the share of its wish that the worst fall gets with the valves as they"
            + " stand; \"!\" marks where that will not do, throttled or not. A choice does it only"
            + " if it does in every one of these conditions, and the worst gives the verdict."
            + " Flows, heads, watts, energy and cost elsewhere are of the project as it stands.");
    if (judging.offered()) {
      ChangesText.offer(page);
    }
  }
}
