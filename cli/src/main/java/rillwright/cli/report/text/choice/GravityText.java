package rillwright.cli.report.text.choice;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.choice.GravityWords;
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
import rillwright.cli.study.choice.GravityAnswer;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.solver.pumping.Wishes;
import rillwright.solver.study.pipechoice.GravityPipe;

/** Sizes of pipe tried where nothing is pumped, on one page. */
public final class GravityText {
  private final GravityAnswer answer;
  private final ShownUnits units;
  private final FallCells falls;
  private final MoneyWords money;
  private final SizeWords sizes;
  private final PageBuilder page;
  private final ShownSizes<GravityPipe> shown;

  private GravityText(GravityAnswer answer) {
    List<GravityPipe> ranked = answer.choice().ranked();
    this.answer = answer;
    this.units = Shown.of(answer);
    this.falls = new FallCells(Wishes.of(ranked.get(0).option().network()), units);
    this.money = new MoneyWords(units, answer.currency());
    this.page = ChangedWords.page(answer.title(), answer.changes());
    this.sizes = new SizeWords(ranked);
    this.shown = ShownSizes.of(answer.choice());
  }

  /** The page. */
  public static Page of(GravityAnswer answer) {
    return new GravityText(answer).print();
  }

  private Page print() {
    page.space();
    page.paragraph(
        sizes.title() + ". There is no pump: the difference in level alone drives the water.");
    page.table(choices());
    shown.tellMore(page);
    if (shown.rows().stream().anyMatch(pipe -> pipe.run().throttled().isPresent())) {
      page.paragraph(CostNotes.THROTTLED);
    }
    page.table(WaterTable.of(shown.rows(), sizes, units));
    answer.conditions().ifPresent(this::conditions);
    page.heading("WHAT TO KNOW");
    GravityNotes.print(answer, page);
    return page.build();
  }

  private TableBuilder choices() {
    TableBuilder table = new TableBuilder(sizes.heading());
    falls.addColumns(table);
    table.column("pipe", Side.RIGHT).column("verdict", Side.LEFT);
    GravityWords words = new GravityWords(units);
    for (GravityPipe pipe : shown.rows()) {
      List<Cell> cells =
          new ArrayList<>(
              falls.cells(
                  pipe.stateInUse(), pipe.run().inUse().worst(), pipe.run().inUse().worstShare()));
      cells.add(Cell.of(money.amount(pipe.option().materialCost())));
      cells.add(new Cell(words.brief(pipe), pipe.does() ? Tone.GOOD : Tone.WARNING));
      table.row(sizes.cell(pipe.option()), cells);
    }
    return table;
  }

  private void conditions(JudgingConditions judging) {
    ConditionTables tables = new ConditionTables(judging, units, page);
    for (GravityPipe pipe : shown.rows()) {
      tables.row(
          sizes.cell(pipe.option()),
          pipe.conditions().stream()
              .map(it -> new ConditionTables.Gets(it.run().isPresent(), it.worstShare(), it.does()))
              .toList());
    }
    tables.print();
  }
}
