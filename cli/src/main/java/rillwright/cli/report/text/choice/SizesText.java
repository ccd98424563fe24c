package rillwright.cli.report.text.choice;

import java.util.List;
import java.util.Optional;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.GravityAnswer;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.cli.study.choice.SizesAnswer;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.PointName;
import rillwright.solver.study.pipechoice.RankedPipes;
import rillwright.solver.study.pipechoice.SizedPipe;

/** Sizes of pipe tried, on one page: what is shown alike whether a pump drives the water or not. */
public abstract sealed class SizesText<P extends SizedPipe> permits PumpedSizes, UnpumpedSizes {
  /** Which sizes count as doing it. */
  static final String MEET = "those that meet every target (up to 5 % short counts)";

  final ShownUnits units;
  final MoneyWords money;
  final SizeWords sizes;
  final PageBuilder page;
  final CostNotes costs;
  final List<P> rows;
  private final SizesAnswer<P> answer;
  private final RankedPipes<P> choice;
  private final ShownSizes<P> shown;

  SizesText(SizesAnswer<P> answer) {
    this.answer = answer;
    this.choice = answer.choice();
    this.units = Shown.of(answer);
    this.money = new MoneyWords(units, answer.currency());
    this.sizes = new SizeWords(choice.ranked());
    this.page = ChangedWords.page(answer.title(), answer.changes());
    this.costs = new CostNotes(page, units, answer.currency());
    this.shown = ShownSizes.of(choice);
    this.rows = shown.rows();
  }

  /** The page on sizes with their pumps. */
  public static Page of(PipesAnswer answer) {
    return new PumpedSizes(answer).print();
  }

  /** The page on sizes that water runs through of itself. */
  public static Page of(GravityAnswer answer) {
    return new UnpumpedSizes(answer).print();
  }

  /** What drives the water, after the names of the lines. */
  abstract String driven();

  /** Adds the columns between a size and its verdict. */
  abstract void addColumns(TableBuilder table);

  /** What stands in them. */
  abstract List<Cell> cells(P pipe);

  /** The verdict in a cell. */
  abstract String brief(P pipe);

  /** The verdict in a sentence. */
  abstract String full(P pipe);

  /** Whether the figures of its row are at a throttled point. */
  abstract boolean isThrottled(P pipe);

  /** Adds what its worst fall gets in each condition. */
  abstract void addTo(ConditionTables tables, P pipe);

  /** Why the first is the first: "Least cost of ...". */
  abstract String first(P least);

  /** With which pump, and at what cost; may be empty. */
  abstract String at(P pipe);

  /** Whether what a larger size would do is with the valves as they stand. */
  abstract boolean isAsTheyStand(P least, P next);

  /** What a larger size would do. */
  abstract String buys(P least, P next);

  /** Whether that is worth it. */
  abstract String pays(P least, P next);

  /** What would have to change where none meets the targets. */
  abstract String change(P nearest);

  /** What the prices of pipes mean here, after what they mean anywhere. */
  abstract String pricesMean();

  /** What stands below the first table. */
  void besideTheTable() {}

  /** Tables on what runs. */
  void running() {}

  /** What the first takes in a year. */
  String year(P least) {
    return "";
  }

  /** How much more the second costs. */
  String more(P least, P second) {
    return "";
  }

  /** Notes on what runs, before those on pipe. */
  void runningNotes() {}

  /** Notes on what was not tried. */
  void leftOut() {}

  final Page print() {
    page.space();
    page.paragraph(sizes.title() + driven());
    page.table(choices());
    shown.tellMore(page);
    if (rows.stream().anyMatch(this::isThrottled)) {
      page.paragraph(CostNotes.THROTTLED);
    }
    besideTheTable();
    page.table(WaterTable.of(rows, sizes, units));
    running();
    answer.conditions().ifPresent(this::conditions);
    page.heading("WARNINGS AND NOTES");
    Optional<P> least = choice.leastCost();
    least.ifPresentOrElse(this::chosen, () -> none(choice.ranked().get(0)));
    answer.conditions().ifPresent(judging -> ConditionTables.note(judging, page));
    runningNotes();
    if (answer.conditions().isEmpty()) {
      page.paragraph(
          "Judged as the file stands; a size may fall short in other conditions, which --conditions"
              + " tries too.",
          "Judged as the file stands; a size may fall short in other conditions.");
    }
    costs.pipe(
        answer.unpriced(),
        choice.ranked().stream().anyMatch(it -> it.option().materialCost().isPresent()),
        pricesMean());
    costs.uncounted(answer.uncounted());
    leftOut();
    SiteCautions.print(this instanceof PumpedSizes, page);
    return page.build();
  }

  private TableBuilder choices() {
    TableBuilder table = new TableBuilder(sizes.heading());
    addColumns(table);
    table.column("verdict", Side.LEFT);
    for (P pipe : rows) {
      List<Cell> cells = cells(pipe);
      cells.add(new Cell(brief(pipe), pipe.meetsTargets() ? Tone.GOOD : Tone.WARNING));
      table.row(sizes.cell(pipe.option()), cells);
    }
    return table;
  }

  private void conditions(JudgingConditions judging) {
    ConditionTables tables = new ConditionTables(judging, units, page);
    rows.forEach(pipe -> addTo(tables, pipe));
    tables.print();
  }

  private void chosen(P least) {
    page.paragraph(first(least) + ": " + shown(least) + "." + year(least));
    choice
        .runnerUp()
        .ifPresent(
            second ->
                page.paragraph("Runner-up" + more(least, second) + ": " + shown(second) + "."));
    List<P> larger = choice.nextSizesUp(least);
    if (larger.isEmpty()) {
      page.paragraph(CostNotes.LARGEST);
    }
    for (P next : larger) {
      page.paragraph(
          (isAsTheyStand(least, next) ? "With the valves as they stand, the" : "The")
              + " next size up, "
              + sizes.phrase(next.option())
              + ", would "
              + buys(least, next)
              + ". "
              + pays(least, next));
    }
    FindingCell.besideTheVerdict(least.findings())
        .forEach(finding -> page.marked("! ", finding.message(units)));
  }

  void none(P nearest) {
    page.marked(
        "! ",
        "None of these sizes meets every target. The nearest is "
            + shown(nearest)
            + ". "
            + change(nearest));
  }

  private String shown(P pipe) {
    return sizes.phrase(pipe.option()) + at(pipe) + ": " + full(pipe);
  }

  /** "give "fall" 9.4 instead of 9.1 m3/h", the valves as they stand. */
  final String gives(PointName fall, P least, P next) {
    String was = units.flow(least.state().point(fall).outflowM3PerS());
    String is = units.flow(next.state().point(fall).outflowM3PerS());
    return "give "
        + PlainText.quoted(fall.value())
        + " "
        + is
        + (was.equals(is) ? " as before" : " instead of " + was);
  }
}
