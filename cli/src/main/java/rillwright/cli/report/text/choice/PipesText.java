package rillwright.cli.report.text.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.report.choice.JudgedWords;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.solver.study.pipechoice.RatedPipe;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RunningPoint;

/** Sizes of pipe tried, on one page. */
public final class PipesText {
  private static final String UNKNOWN = "-";

  private final PipesAnswer answer;
  private final ShownUnits units;
  private final FallCells falls;
  private final MoneyWords money;
  private final PaybackWords paybacks;
  private final SizeWords sizes;
  private final PageBuilder page;
  private final ShownSizes<RatedPipe> shown;

  private PipesText(PipesAnswer answer) {
    List<RatedPipe> ranked = answer.choice().ranked();
    this.answer = answer;
    this.units = Shown.of(answer);
    this.sizes = new SizeWords(ranked);
    this.money = new MoneyWords(units, answer.currency());
    this.paybacks = new PaybackWords(answer);
    this.page = ChangedWords.page(answer.duty().title(), answer.changes());
    this.shown = ShownSizes.of(answer.choice());
    this.falls = new FallCells(ranked.get(0).demand().wishes(), units, onePump() ? 2 : 1);
  }

  /** The page. */
  public static Page of(PipesAnswer answer) {
    return new PipesText(answer).print();
  }

  private Page print() {
    page.space();
    page.paragraph(
        sizes.title()
            + (onePump()
                ? ", all with " + pump(shown.rows().get(0)) + "."
                : ", each with its own cheapest pump or speed."));
    page.table(choices());
    shown.tellMore(page);
    besideTheTable();
    page.table(WaterTable.of(shown.rows(), sizes, units));
    page.table(pumps());
    answer.conditions().ifPresent(this::conditions);
    page.heading("WHAT TO KNOW");
    PipeNotes.print(answer, page);
    return page.build();
  }

  private void conditions(JudgingConditions judging) {
    ConditionTables tables = new ConditionTables(judging, units, page);
    shown.rows().forEach(rated -> tables.row(sizes.cell(rated.option()), rated.pump()));
    tables.print();
  }

  private TableBuilder choices() {
    TableBuilder table = new TableBuilder(sizes.heading());
    falls.addColumns(table);
    if (!onePump()) {
      table.column("pump", Side.LEFT);
    }
    table
        .column("pipe", Side.RIGHT)
        .column(units.number(answer.terms().years()) + " years", Side.RIGHT)
        .column("verdict", Side.LEFT);
    for (RatedPipe rated : shown.rows()) {
      PumpTrial trial = rated.pump().trial();
      List<Cell> cells = new ArrayList<>(falls.cells(trial));
      if (!onePump()) {
        cells.add(Cell.of(pump(rated)));
      }
      cells.add(Cell.of(money.amount(rated.option().materialCost())));
      cells.add(Cell.of(money.cost(rated, marksPumps())));
      String verdict = new JudgedWords(units, rated.demand(), rated.pump()).brief();
      cells.add(new Cell(verdict, rated.does() ? Tone.GOOD : Tone.WARNING));
      table.row(sizes.cell(rated.option()), cells);
    }
    return table;
  }

  /** Whether a cost without the pump is marked: not where all run the one that there is. */
  private boolean marksPumps() {
    return answer.pumpsFree();
  }

  private void besideTheTable() {
    List<RatedPipe> does = shown.rows().stream().filter(RatedPipe::does).toList();
    if (does.stream().anyMatch(RatedPipe::isThrottled)) {
      page.paragraph(CostNotes.THROTTLED);
    }
    if (does.stream().anyMatch(rated -> rated.pump().trial().setup().price().isEmpty())) {
      new CostNotes(page, units, answer.currency()).unpricedPumps(marksPumps());
    }
  }

  private boolean onePump() {
    return shown.rows().stream().allMatch(rated -> rated.hasThePumpOf(shown.rows().get(0)));
  }

  private String pump(RatedPipe rated) {
    return SetupWords.of(rated.pump().trial().setup(), units);
  }

  private String power(OptionalDouble powerW) {
    return powerW.isPresent() ? units.power(powerW.getAsDouble()) : UNKNOWN;
  }

  private TableBuilder pumps() {
    TableBuilder table =
        new TableBuilder("PUMP")
            .column("head", Side.RIGHT)
            .column("draws", Side.RIGHT)
            .column("a year", Side.RIGHT)
            .column("paid back", Side.LEFT);
    for (RatedPipe rated : shown.rows()) {
      RunningPoint point = rated.pump().trial().inUse();
      table.row(
          sizes.cell(rated.option()),
          units.head(point.headM()),
          power(point.powerW()),
          money.energy(rated.pump().energyPerYearKwh()),
          paybacks.cell(rated));
    }
    return table;
  }
}
