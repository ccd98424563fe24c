package rillwright.cli.report.text.choice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.choice.GravityWords;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.GravityAnswer;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.PointName;
import rillwright.solver.study.pipechoice.GravityPipe;

/** What to know about a ranking of sizes where nothing is pumped. */
final class GravityNotes {
  private final GravityAnswer answer;
  private final ShownUnits units;
  private final GravityWords words;
  private final MoneyWords money;
  private final SizeWords sizes;
  private final PageBuilder page;

  private GravityNotes(GravityAnswer answer, PageBuilder page) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.words = new GravityWords(units);
    this.money = new MoneyWords(units, answer.currency());
    this.page = page;
    this.sizes = new SizeWords(answer.choice().ranked());
  }

  static void print(GravityAnswer answer, PageBuilder page) {
    new GravityNotes(answer, page).print();
  }

  private void print() {
    Optional<GravityPipe> least = answer.choice().leastCost();
    if (least.isPresent()) {
      chosen(least.get());
    } else {
      GravityPipe nearest = answer.choice().ranked().get(0);
      page.marked(
          "! ",
          "With none of these sizes every fall gets its wish. Nearest is "
              + told(nearest)
              + ". More difference in level, a larger pipe, fewer fittings or a pump would do it;"
              + " where another fall gets more than its wish, throttle that (\"rillwright"
              + " balance\").");
    }
    answer.conditions().ifPresent(judging -> ConditionTables.note(judging, page));
    CostNotes notes = new CostNotes(page, units, answer.currency());
    notes.pipe(
        answer.unpriced(),
        answer.choice().ranked().stream().anyMatch(it -> it.option().materialCost().isPresent()),
        "");
    notes.uncounted(answer.uncounted());
    CostNotes.trench(page);
  }

  private void chosen(GravityPipe least) {
    boolean priced = least.option().materialCost().isPresent();
    page.paragraph(
        (priced ? "Least cost of " : "Narrowest of ") + PipeNotes.MEET + ": " + told(least) + ".");
    answer
        .choice()
        .runnerUp()
        .ifPresent(second -> page.paragraph("Runner-up: " + told(second) + "."));
    List<GravityPipe> larger = answer.choice().nextSizesUp(least);
    larger.forEach(next -> next(least, next));
    if (larger.isEmpty()) {
      page.paragraph(CostNotes.LARGEST);
    }
    FindingCell.besideTheVerdict(least.findings())
        .forEach(finding -> page.marked("! ", finding.message(units)));
  }

  private void next(GravityPipe least, GravityPipe next) {
    PointName fall = least.run().asItStands().worst();
    String was = units.flow(least.state().point(fall).outflowM3PerS());
    String is = units.flow(next.state().point(fall).outflowM3PerS());
    page.paragraph(
        "The next size up, "
            + sizes.phrase(next.option())
            + ", would with the valves as they stand give "
            + PlainText.quoted(fall.value())
            + " "
            + is
            + (was.equals(is) ? " as before" : " instead of " + was)
            + ". Nothing is pumped, so it buys flow and not money.");
  }

  private String told(GravityPipe pipe) {
    OptionalDouble cost = pipe.option().materialCost();
    return sizes.phrase(pipe.option())
        + (cost.isPresent() ? ", " + money.amount(cost) : "")
        + ": "
        + words.full(pipe);
  }
}
