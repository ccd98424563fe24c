package rillwright.cli.report.text.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.report.PipesAnswer;
import rillwright.cli.report.choice.JudgedWords;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.conditions.JudgingConditions;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.Ink;
import rillwright.cli.report.text.Ink.Tone;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.text.TextTable;
import rillwright.cli.report.text.TextTable.Cell;
import rillwright.cli.report.text.TextTable.Side;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.study.pipechoice.RatedPipe;
import rillwright.solver.trial.PumpTrial;

/** Sizes of pipe tried, on one page. */
public final class PipesText {
  /** Rows of a table; the rest is told by number. */
  private static final int MOST_ROWS = 16;

  private static final String UNKNOWN = "-";

  private final PipesAnswer answer;
  private final ShownUnits units;
  private final FallCells falls;
  private final MoneyWords money;
  private final PaybackWords paybacks;
  private final WaterCells water;
  private final Page page;
  private final List<RatedPipe> shown;

  private PipesText(PipesAnswer answer, Page page) {
    List<RatedPipe> ranked = answer.choice().ranked();
    this.answer = answer;
    this.units = answer.duty().units();
    this.falls = new FallCells(ranked.get(0).demand().wishes(), units);
    this.money = new MoneyWords(units, answer.currency());
    this.paybacks = new PaybackWords(answer);
    this.water = new WaterCells(units);
    this.page = page;
    this.shown = ranked.subList(0, Math.min(MOST_ROWS, ranked.size()));
  }

  /** The page. */
  public static String of(PipesAnswer answer, Ink ink) {
    Page page = new Page(ink);
    new PipesText(answer, page).print();
    return page.toString();
  }

  private void print() {
    page.title(answer.duty().title());
    ChangedWords.print(answer.changes(), page);
    page.blank();
    page.paragraph(
        "Pipe of "
            + SizeWords.lines(shown.get(0).option())
            + ", the best first"
            + (onePump()
                ? ", all with " + pump(shown.get(0)) + "."
                : ", each with its own cheapest pump or speed."));
    page.table(choices());
    int more = answer.choice().ranked().size() - shown.size();
    if (more > 0) {
      page.paragraph("and " + more + " more; --format json gives them all.");
    }
    page.table(waters());
    answer.conditions().ifPresent(this::conditions);
    page.heading("WHAT TO KNOW");
    PipeNotes.print(answer, page);
  }

  private void conditions(JudgingConditions judging) {
    ConditionTables tables = new ConditionTables(judging, units, page);
    shown.forEach(rated -> tables.row(SizeWords.of(rated.option()), rated.pump()));
    tables.print();
  }

  private TextTable choices() {
    TextTable table = new TextTable("SIZES");
    falls.addColumns(table);
    if (!onePump()) {
      table.column("pump", Side.LEFT);
    }
    table
        .column("draws", Side.RIGHT)
        .column("pipe", Side.RIGHT)
        .column(units.number(answer.terms().years()) + " years", Side.RIGHT)
        .column("verdict", Side.LEFT);
    for (RatedPipe rated : shown) {
      PumpTrial trial = rated.pump().trial();
      List<Cell> cells = new ArrayList<>(falls.cells(trial));
      if (!onePump()) {
        cells.add(Cell.of(pump(rated)));
      }
      cells.add(Cell.of(power(trial.inUse().powerW())));
      cells.add(Cell.of(money.amount(rated.option().materialCost())));
      cells.add(Cell.of(money.amount(rated.costOverYears())));
      String verdict = new JudgedWords(units, rated.demand(), rated.pump()).brief();
      cells.add(new Cell(verdict, rated.does() ? Tone.GOOD : Tone.WARNING));
      table.row(SizeWords.of(rated.option()), cells);
    }
    return table;
  }

  private boolean onePump() {
    return shown.stream().allMatch(rated -> rated.hasThePumpOf(shown.get(0)));
  }

  private String pump(RatedPipe rated) {
    return SetupWords.of(rated.pump().trial().setup(), units);
  }

  private String power(OptionalDouble powerW) {
    return powerW.isPresent() ? units.power(powerW.getAsDouble()) : UNKNOWN;
  }

  private TextTable waters() {
    TextTable table =
        new TextTable("WATER")
            .column(WaterCells.speedTitle(shown.get(0)), Side.RIGHT)
            .column("per " + units.frictionLength(), Side.RIGHT)
            .column("pump head", Side.RIGHT)
            .column("a year", Side.RIGHT)
            .column("in the pipe", Side.RIGHT)
            .column("paid back", Side.LEFT)
            .column("look out for", Side.LEFT);
    for (RatedPipe rated : shown) {
      table.row(
          SizeWords.of(rated.option()),
          water.speed(rated),
          water.friction(rated),
          units.head(rated.pump().trial().operating().headM()),
          money.energy(rated.pump().energyPerYearKwh()),
          units.volume(rated.holdUpM3()),
          paybacks.cell(rated),
          FindingCell.of(rated.pump().trial().findings()));
    }
    return table;
  }
}
