package rillwright.cli.report.text.choice;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.GravityAnswer;
import rillwright.cli.report.choice.GravityWords;
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
import rillwright.solver.pumping.Wishes;
import rillwright.solver.study.pipechoice.GravityPipe;

/** Sizes of pipe tried where nothing is pumped, on one page. */
public final class GravityText {
  /** Rows of a table; the rest is told by number. */
  private static final int MOST_ROWS = 16;

  private final GravityAnswer answer;
  private final ShownUnits units;
  private final FallCells falls;
  private final MoneyWords money;
  private final WaterCells water;
  private final SizeWords sizes;
  private final Page page;
  private final List<GravityPipe> shown;

  private GravityText(GravityAnswer answer, Page page) {
    List<GravityPipe> ranked = answer.choice().ranked();
    this.answer = answer;
    this.units = answer.units();
    this.falls = new FallCells(Wishes.of(ranked.get(0).option().network()), units);
    this.money = new MoneyWords(units, answer.currency());
    this.water = new WaterCells(units);
    this.page = page;
    this.sizes = new SizeWords(ranked);
    this.shown = ranked.subList(0, Math.min(MOST_ROWS, ranked.size()));
  }

  /** The page. */
  public static String of(GravityAnswer answer, Ink ink) {
    Page page = new Page(ink);
    new GravityText(answer, page).print();
    return page.toString();
  }

  private void print() {
    page.title(answer.title());
    ChangedWords.print(answer.changes(), page);
    page.blank();
    page.paragraph(
        sizes.title() + ". There is no pump: the difference in level alone drives the water.");
    page.table(choices());
    int more = answer.choice().ranked().size() - shown.size();
    if (more > 0) {
      page.paragraph("and " + more + " more; --format json gives them all.");
    }
    page.table(waters());
    answer.conditions().ifPresent(this::conditions);
    page.heading("WHAT TO KNOW");
    GravityNotes.print(answer, page);
  }

  private TextTable choices() {
    TextTable table = new TextTable(sizes.heading());
    falls.addColumns(table);
    table.column("pipe", Side.RIGHT).column("verdict", Side.LEFT);
    GravityWords words = new GravityWords(units);
    for (GravityPipe pipe : shown) {
      List<Cell> cells =
          new ArrayList<>(falls.cells(pipe.state(), pipe.run().worst(), pipe.run().worstShare()));
      cells.add(Cell.of(money.amount(pipe.option().materialCost())));
      cells.add(new Cell(words.brief(pipe), pipe.does() ? Tone.GOOD : Tone.WARNING));
      table.row(sizes.cell(pipe.option()), cells);
    }
    return table;
  }

  private TextTable waters() {
    TextTable table =
        new TextTable("WATER")
            .column(WaterCells.speedTitle(shown.get(0)), Side.RIGHT)
            .column("per " + units.frictionLength(), Side.RIGHT)
            .column("in the pipe", Side.RIGHT)
            .column("look out for", Side.LEFT);
    for (GravityPipe pipe : shown) {
      table.row(
          sizes.cell(pipe.option()),
          water.speed(pipe),
          water.friction(pipe),
          units.volume(pipe.holdUpM3()),
          FindingCell.of(pipe.findings()));
    }
    return table;
  }

  private void conditions(JudgingConditions judging) {
    ConditionTables tables = new ConditionTables(judging, units, page);
    for (GravityPipe pipe : shown) {
      tables.row(
          sizes.cell(pipe.option()),
          pipe.conditions().stream()
              .map(it -> new ConditionTables.Gets(it.run().isPresent(), it.worstShare(), it.does()))
              .toList());
    }
    tables.print();
  }
}
