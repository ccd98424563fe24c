package rillwright.cli.report.text.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import rillwright.cli.report.mend.FirstWords;
import rillwright.cli.report.mend.RemedyWords;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.Remedy;
import rillwright.cli.study.mend.change.Work;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.PondNeeds;
import rillwright.solver.network.Point;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.Verdict;

/** What would mend a job, on one page. */
public final class MendText {
  private static final int MOST_MENDING = 8;
  private static final int MOST_OTHERS = 5;
  private static final int MOST_SET = 3;

  /** More falls than this have their shares only. */
  private static final int FEW_FALLS = 2;

  /** What is to be done takes a line of its own where it is longer. */
  private static final int LONGEST_NAME = 36;

  private static final String COSTS =
      "Costs: what is bought once, and the trench where one is dug; a dash where the file has no"
          + " price for it. ";

  private static final String MET = "A fall counts as met from 100 to 125 % of its target.";

  private static final String NOTHING_MENDS =
      "No change that was tried meets the targets, alone or two together.";

  private static final String UNKNOWN = "-";

  private final MendAnswer answer;
  private final ShownUnits units;
  private final List<Point> falls;
  private final PageBuilder page;

  private MendText(MendAnswer answer, PageBuilder page) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.falls =
        answer.state().network().waysOut().stream()
            .filter(point -> point.targetM3PerS().orElse(0) > 0)
            .toList();
    this.page = page;
  }

  /** The page. */
  public static Page of(MendAnswer answer) {
    return new MendText(answer, ChangedWords.page(answer.title(), answer.changes())).print();
  }

  /** The best of what mends, on another page; nothing where nothing is in need. */
  public static void best(MendAnswer answer, int most, PageBuilder page) {
    if (answer.needs().isEmpty()) {
      return;
    }
    MendText text = new MendText(answer, page);
    List<Remedy> mending = answer.mendingAll();
    if (mending.isEmpty()) {
      page.heading("REMEDIES");
      page.marked("! ", NOTHING_MENDS);
    } else {
      page.table(text.remedies("REMEDIES, BEST FIRST", shown(mending, most)));
      page.paragraph(text.costs());
    }
    text.duty();
  }

  private Page print() {
    if (answer.needs().isEmpty()) {
      page.space();
      page.paragraph("Every fall gets its target; no change is proposed.");
      return page.build();
    }
    List<Remedy> mending = answer.mendingAll();
    List<Remedy> some = answer.mendingSome();
    List<Remedy> others = answer.remedies().stream().filter(it -> !it.mends()).toList();
    if (!mending.isEmpty()) {
      page.space();
      FirstWords.of(answer).ifPresent(page::paragraph);
    }
    page.table(needs());
    if (!mending.isEmpty()) {
      page.table(remedies("MEET EVERY TARGET, BEST FIRST", shown(mending, MOST_MENDING)));
      more(mending, MOST_MENDING);
      page.paragraph(costs());
    }
    page.tableOfAny(remedies("MEET SOME NEEDS", shown(some, MOST_OTHERS)));
    more(some, MOST_OTHERS);
    page.tableOfAny(remedies("FALL SHORT, NEAREST FIRST", shown(others, MOST_OTHERS)));
    more(others, MOST_OTHERS);
    if (mending.isEmpty() && !(some.isEmpty() && others.isEmpty())) {
      page.paragraph(costs());
    }
    cannot();
    page.heading("WARNINGS AND NOTES");
    first(mending);
    duty();
    cautions();
    return page.build();
  }

  private static List<Remedy> shown(List<Remedy> all, int most) {
    return all.subList(0, Math.min(most, all.size()));
  }

  private void more(List<Remedy> all, int most) {
    if (all.size() > most) {
      page.paragraph("and " + (all.size() - most) + " more; \"--format json\" lists them all.");
    }
  }

  private TableBuilder needs() {
    TableBuilder table =
        new TableBuilder("NEEDS")
            .column("gets", Side.RIGHT)
            .column("target", Side.RIGHT)
            .column("of target", Side.RIGHT)
            .column("", Side.LEFT);
    for (Need need : answer.needs()) {
      OptionalDouble target = need.targetM3PerS();
      table.row(
          need.at(),
          need.isOfTarget() || need.hasM3PerS() > 0 ? units.flow(need.hasM3PerS()) : UNKNOWN,
          shown(target, units::writtenFlow),
          shown(target, it -> units.share(need.hasM3PerS() / it)),
          need.code().replace('-', ' '));
    }
    return table;
  }

  private static String shown(OptionalDouble number, DoubleFunction<String> words) {
    return number.isPresent() ? words.apply(number.getAsDouble()) : UNKNOWN;
  }

  private TableBuilder remedies(String heading, List<Remedy> rows) {
    TableBuilder table = new TableBuilder(heading, LONGEST_NAME);
    if (rows.isEmpty()) {
      return table;
    }
    falls.forEach(fall -> table.column(fall.name().value(), Side.RIGHT));
    if (isPumped()) {
      table.column("draws", Side.RIGHT);
    }
    table.column("costs", Side.RIGHT);
    if (isPumped()) {
      table.column("a year", Side.RIGHT);
    }
    table.row(
        "as it stands",
        row(
            answer.state(),
            shown(answer.takes().powerW(), units::power),
            "nothing",
            money(answer.takes().costPerYear())));
    int number = 0;
    for (Remedy remedy : rows) {
      number++;
      OptionalDouble price = remedy.candidate().price();
      table.row(
          number + "  " + RemedyWords.of(remedy.candidate(), units),
          row(
              remedy.state(),
              shown(remedy.powerW(), units::power),
              price.orElse(1) == 0 ? "nothing" : money(price),
              money(remedy.costPerYear())));
    }
    return table;
  }

  private List<Cell> row(SteadyState state, String power, String price, String year) {
    List<Cell> cells = new ArrayList<>();
    for (Point fall : falls) {
      double flow = state.point(fall.name()).outflowM3PerS();
      double target = state.network().point(fall.name()).targetM3PerS().orElse(Double.NaN);
      String share = units.share(flow / target);
      String shown = falls.size() > FEW_FALLS ? share : units.flow(flow) + " " + share;
      cells.add(new Cell(shown, isMet(flow / target) ? Tone.GOOD : Tone.WARNING));
    }
    cells.addAll(
        isPumped()
            ? List.of(Cell.of(power), Cell.of(price), Cell.of(year))
            : List.of(Cell.of(price)));
    return cells;
  }

  private boolean isPumped() {
    return answer.state().network().isPumped();
  }

  private String costs() {
    return COSTS + (isPumped() ? "A year: electricity. " : "") + MET;
  }

  private static boolean isMet(double share) {
    return share >= 1 && share <= Verdict.TOO_MUCH_SHARE;
  }

  private String money(OptionalDouble amount) {
    return shown(
        amount, it -> units.amount(it) + answer.currency().map(word -> " " + word).orElse(""));
  }

  private void cannot() {
    List<String> sentences = FirstWords.alsoOf(answer);
    if (!sentences.isEmpty()) {
      page.heading("NOT ENOUGH ALONE, AND WHY");
      sentences.forEach(sentence -> page.marked("- ", sentence));
    }
  }

  private void first(List<Remedy> mending) {
    if (mending.isEmpty()) {
      page.marked("! ", NOTHING_MENDS);
      return;
    }
    page.paragraph("Any command shows the whole answer with one of these changes:");
    int number = 0;
    for (Remedy remedy : shown(mending, MOST_SET)) {
      number++;
      List<String> set = remedy.candidate().set().stream().map(MendText::option).toList();
      page.paragraph(number + ": " + String.join(" ", set));
    }
  }

  /** In double quotes, which every shell takes, unless the change has some itself. */
  private static String option(String change) {
    String quote = change.contains("\"") ? "'" : "\"";
    return "--set " + quote + change + quote;
  }

  private void duty() {
    answer
        .duty()
        .flatMap(duty -> duty.duty().throttled())
        .ifPresent(
            throttled ->
                page.paragraph(
                    "Another pump meets the targets if it makes "
                        + units.flow(throttled.flowM3PerS())
                        + " at "
                        + units.head(throttled.headM())
                        + leastShutOff()
                        + (falls.size() > 1
                            ? ", the other falls throttled to their targets."
                            : ".")));
  }

  private String leastShutOff() {
    return answer
        .duty()
        .flatMap(duty -> duty.duty().leastShutOff())
        .map(least -> " and more than " + units.head(least.headM()) + " at no flow")
        .orElse("");
  }

  private void cautions() {
    List<Work> works = answer.remedies().stream().map(it -> it.candidate().work()).toList();
    if (isPumped()) {
      page.marked(
          "- ",
          "Electricity and water: switch the pump off and unplug it before hands go in. Wiring is"
              + " for a qualified electrician, licensed where the law requires it.");
    }
    if (answer.needs().stream().anyMatch(need -> PondNeeds.isOfStarving(need.code()))) {
      page.marked(
          "- ",
          "An automatic fill through an air gap keeps a pond at its level; a file does not hold"
              + " one. Any open water can drown a small child.");
    }
    if (works.stream().anyMatch(Work::digs)) {
      page.marked(
          "- ",
          "Have buried services located before digging. Any trench can collapse; follow local rules"
              + " before entering it.");
    }
  }
}
