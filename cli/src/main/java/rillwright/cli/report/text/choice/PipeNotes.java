package rillwright.cli.report.text.choice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.choice.JudgedWords;
import rillwright.cli.report.choice.NotNeeded;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.PointName;
import rillwright.solver.study.pipechoice.RatedPipe;
import rillwright.solver.trial.Verdict;

/** What to know about a ranking of sizes. */
final class PipeNotes {
  /** Which sizes count as doing it. */
  static final String MEET = "those that meet every wish (up to 5 % short counts)";

  /** Less than this share of a flow is noticeably less of it. */
  private static final double NOTICEABLE_SHARE = 0.99;

  private final PipesAnswer answer;
  private final ShownUnits units;
  private final MoneyWords money;
  private final PaybackWords paybacks;
  private final SizeWords sizes;
  private final PageBuilder page;

  private PipeNotes(PipesAnswer answer, PageBuilder page) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.money = new MoneyWords(units, answer.currency());
    this.paybacks = new PaybackWords(answer);
    this.sizes = new SizeWords(answer.choice().ranked());
    this.page = page;
  }

  static void print(PipesAnswer answer, PageBuilder page) {
    new PipeNotes(answer, page).print();
  }

  private void print() {
    Optional<RatedPipe> least = answer.choice().leastCost();
    if (least.isPresent()) {
      page.paragraph(
          first(least.get())
              + ": "
              + told(least.get())
              + "."
              + YearWords.of(answer.year(), least.get().pump().trial(), units, answer.currency()));
      answer
          .choice()
          .runnerUp()
          .ifPresent(
              second ->
                  page.paragraph(
                      "Runner-up" + more(least.get(), second) + ": " + told(second) + "."));
      nextSizes(least.get());
      FindingCell.besideTheVerdict(least.get().findings())
          .forEach(finding -> page.marked("! ", finding.message(units)));
    } else {
      none(answer.choice().ranked().get(0));
    }
    answer.conditions().ifPresent(judging -> ConditionTables.note(judging, page));
    samePump();
    CostNotes notes = new CostNotes(page, units, answer.currency());
    notes.electricity(
        answer.terms(),
        answer.pumpsFree()
            ? "size, the narrower first, and each one's pumps by energy"
            : "size, the narrower first");
    notes.pipe(
        answer.unpriced(),
        answer.choice().ranked().stream().anyMatch(it -> it.option().materialCost().isPresent()),
        " \"Paid back\" is against the cheapest pipe that meets every wish.");
    notes.uncounted(answer.uncounted());
    notes.otherCurrencies(answer.otherCurrencies());
    notes.notTried(answer.faults(), answer.choice().leftOut());
    CostNotes.trench(page);
    notes.effort(answer.effort());
  }

  private String first(RatedPipe least) {
    boolean priced = least.option().materialCost().isPresent();
    boolean othersUnpriced =
        answer.choice().ranked().stream()
            .anyMatch(rated -> rated.does() && rated.option().materialCost().isEmpty());
    if (least.costOverYears().isEmpty()) {
      return "Narrowest of " + MEET + (priced && othersUnpriced ? " and have a price" : "");
    }
    return "Least cost of " + MEET + (priced ? "" : ", the pipe not counted");
  }

  private String told(RatedPipe rated) {
    OptionalDouble cost = rated.costOverYears();
    return sizes.phrase(rated.option())
        + " with "
        + SetupWords.of(rated.pump().trial().setup(), units)
        + (cost.isPresent()
            ? ", "
                + money.cost(rated, answer.pumpsFree())
                + " over "
                + units.number(answer.terms().years())
                + " years"
            : "")
        + ": "
        + new JudgedWords(units, rated.demand(), rated.pump()).full();
  }

  /** ", 30 EUR more" where both costs are known. */
  private String more(RatedPipe least, RatedPipe second) {
    OptionalDouble first = least.costOverYears();
    OptionalDouble next = second.costOverYears();
    if (first.isEmpty() || next.isEmpty()) {
      return "";
    }
    double difference = next.getAsDouble() - first.getAsDouble();
    return difference < 1
        ? ", at the same cost"
        : ", " + money.amount(OptionalDouble.of(difference)) + " more";
  }

  private void nextSizes(RatedPipe least) {
    List<RatedPipe> larger = answer.choice().nextSizesUp(least);
    if (larger.isEmpty()) {
      page.paragraph(CostNotes.LARGEST);
    }
    for (RatedPipe next : larger) {
      page.paragraph(
          "The next size up, "
              + sizes.phrase(next.option())
              + ", would "
              + buys(least, next)
              + ". "
              + (takesFromTheWorst(least, next)
                  ? "The larger pipe serves the other falls first: \"rillwright balance\" tells how"
                      + " to set their valves."
                  : paybacks.sentence(least, next)));
    }
  }

  /** Whether with one and the same pump the fall that is worst off gets less by the larger pipe. */
  private static boolean takesFromTheWorst(RatedPipe least, RatedPipe next) {
    PointName worst = least.pump().trial().verdict().worst();
    double was = least.state().point(worst).outflowM3PerS();
    return least.hasThePumpOf(next)
        && next.state().point(worst).outflowM3PerS() < NOTICEABLE_SHARE * was;
  }

  /**
   * "give 9.4 instead of 9.1 m3/h at …, and draw 128 W instead of 135 W": the flow is what the
   * larger pipe buys, so it is with the valves as they stand.
   */
  private String buys(RatedPipe least, RatedPipe next) {
    OptionalDouble before = least.pump().trial().inUse().powerW();
    OptionalDouble after = next.pump().trial().inUse().powerW();
    if (!least.hasThePumpOf(next) && least.does() && next.does()) {
      return "do it with "
          + SetupWords.of(next.pump().trial().setup(), units)
          + draws(before, after);
    }
    PointName worst = least.pump().trial().verdict().worst();
    String was = units.flow(least.pump().trial().state().point(worst).outflowM3PerS());
    String is = units.flow(next.pump().trial().state().point(worst).outflowM3PerS());
    return (least.isThrottled() || next.isThrottled()
            ? "with the valves as they stand give "
            : "give ")
        + PlainText.quoted(worst.value())
        + " "
        + is
        + (was.equals(is) ? " as before" : " instead of " + was)
        + (least.hasThePumpOf(next)
            ? ""
            : " with " + SetupWords.of(next.pump().trial().setup(), units))
        + draws(before, after);
  }

  private String draws(OptionalDouble before, OptionalDouble after) {
    if (before.isEmpty() || after.isEmpty()) {
      return "";
    }
    String was = units.power(before.getAsDouble());
    String is = units.power(after.getAsDouble());
    return was.equals(is)
        ? ", and draw " + is + " as before"
        : ", and draw " + is + " instead of " + was;
  }

  private void none(RatedPipe nearest) {
    if (nearest.pump().trial().verdict().kind() == Verdict.Kind.NOT_NEEDED) {
      page.marked("! ", NotNeeded.sentence(answer.duty().network(), answer.duty().place()));
      return;
    }
    page.marked(
        "! ",
        "With none of these sizes every fall gets its wish. Nearest is "
            + told(nearest)
            + ". "
            + new JudgedWords(units, nearest.demand(), nearest.pump()).change()
            + (answer.pumpsFree() ? "" : " --from FOLDER tries other pumps with each size."));
  }

  private void samePump() {
    boolean oneSetup =
        answer.choice().ranked().stream()
                .filter(RatedPipe::does)
                .map(rated -> rated.pump().trial().setup())
                .distinct()
                .count()
            == 1;
    boolean several = answer.choice().ranked().stream().filter(RatedPipe::does).count() > 1;
    if (oneSetup && several && !answer.pumpsFree()) {
      page.paragraph(
          "All sizes run one and the same pump, so a larger pipe buys flow and not money. Where"
              + " their watts differ, it is by how far above the wish they run, which a valve"
              + " settles with any size. To see what a larger pipe saves, choose the pump anew for"
              + " each size: --from FOLDER.");
    }
  }
}
