package rillwright.cli.report.text.mend;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import rillwright.cli.report.mend.FirstWords;
import rillwright.cli.report.mend.RoomWords;
import rillwright.cli.report.mend.SearchWords;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.conditions.ChangesText;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.finding.Findings;
import rillwright.solver.finding.Severity;
import rillwright.solver.trial.Verdict;

/** What would mend a job, on one page. */
public final class MendText {
  private static final int MOST_MENDING = 8;
  private static final int MOST_OTHERS = 5;
  private static final int MOST_SET = 3;

  private static final String NOTHING_MENDS =
      "No change that was tried meets every need, alone or with others.";

  private static final String UNKNOWN = "";

  private final MendAnswer answer;
  private final ShownUnits units;
  private final RemedyTable tables;
  private final PageBuilder page;

  private MendText(MendAnswer answer, PageBuilder page) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.tables = new RemedyTable(answer);
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
      page.table(text.tables.of("REMEDIES, BEST FIRST", shown(mending, most)));
      page.paragraph(text.tables.legend());
      text.wholeTarget();
    }
    text.duty();
  }

  private void wholeTarget() {
    if (answer.needs().stream().anyMatch(need -> need.targetM3PerS().isPresent())) {
      page.paragraph(NeedWords.wholeTarget(answer.needs()));
    }
  }

  private Page print() {
    if (answer.needs().isEmpty()) {
      page.space();
      page.paragraph("Every fall gets its target; no change is proposed.");
      alsoWrong();
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
    wholeTarget();
    if (!mending.isEmpty()) {
      page.table(tables.of(all(mending) + ", BEST FIRST", shown(mending, MOST_MENDING)));
      more(mending, MOST_MENDING);
      page.paragraph(tables.legend());
    }
    page.tableOfAny(tables.leaving("MEET SOME NEEDS", shown(some, MOST_OTHERS)));
    more(some, MOST_OTHERS);
    page.tableOfAny(tables.leaving("NOT ENOUGH, NEAREST FIRST", shown(others, MOST_OTHERS)));
    more(others, MOST_OTHERS);
    if (!others.isEmpty()) {
      page.paragraph(
          "Not enough: nothing has all that its rows under NEEDS ask, or something leaves its"
              + " bounds that was in them.");
    }
    throttledToo(shown(mending, MOST_MENDING));
    if (mending.isEmpty() && !(some.isEmpty() && others.isEmpty())) {
      page.paragraph(tables.legend());
    }
    SearchWords.of(answer).ifPresent(this::together);
    if (answer.untried() > 0) {
      page.paragraph(
          "Not tried, because the job is large: "
              + units.number(answer.untried())
              + " more changes; so a better one may exist.");
    }
    cannot();
    answer.conditions().ifPresent(this::conditions);
    page.heading("WARNINGS AND NOTES");
    alsoWrong();
    first(mending);
    duty();
    new MendCautions(answer, page).print();
    return page.build();
  }

  /** What gives a fall too much, and why it is not listed with its valve throttled too. */
  private void throttledToo(List<Remedy> mending) {
    boolean isOver =
        answer.remedies().stream()
            .filter(it -> !it.mendsAllOf(answer.needs()))
            .flatMap(it -> it.leaves().stream())
            .anyMatch(need -> need.code().equals(Need.OVER_TARGET));
    OptionalInt alone =
        IntStream.range(0, mending.size())
            .filter(it -> mending.get(it).candidate().isOfValvesAlone())
            .findFirst();
    if (isOver) {
      page.paragraph(
          "A fall left over "
              + units.share(Verdict.TOO_MUCH_SHARE)
              + " has to be throttled as well"
              + (answer.conditions().isPresent() ? ", by one setting for all conditions." : ".")
              + (alone.isEmpty()
                  ? ""
                  : " Setting valves alone is enough ("
                      + (alone.getAsInt() + 1)
                      + " under "
                      + all(mending)
                      + "), so another pump with valves set too is listed only where it draws"
                      + " less."));
    }
  }

  private static List<Remedy> shown(List<Remedy> all, int most) {
    return all.subList(0, Math.min(most, all.size()));
  }

  private void more(List<Remedy> all, int most) {
    if (all.size() > most) {
      String more = "and " + (all.size() - most) + " more";
      page.paragraph(
          more + "; the answer for programs (\"--format json\") has them all.", more + ".");
    }
  }

  private TableBuilder needs() {
    TableBuilder table =
        new TableBuilder("NEEDS")
            .column("gets", Side.RIGHT)
            .column("target", Side.RIGHT)
            .column("of target", Side.RIGHT)
            .column("", Side.LEFT);
    boolean differ = answer.needs().stream().anyMatch(Need::isOfCondition);
    if (differ) {
      table.column("when", Side.LEFT);
    }
    for (Need need : answer.needs()) {
      OptionalDouble target = need.targetM3PerS();
      List<String> cells =
          List.of(
              need.isOfTarget() || need.hasM3PerS() > 0 ? units.flow(need.hasM3PerS()) : UNKNOWN,
              shown(target, units::writtenFlow),
              shown(target, it -> units.share(need.hasM3PerS() / it)),
              NeedWords.what(need),
              NeedWords.when(need));
      table.row(need.at(), cells.subList(0, differ ? 5 : 4).toArray(String[]::new));
    }
    return table;
  }

  private static String shown(OptionalDouble number, DoubleFunction<String> words) {
    return number.isPresent() ? words.apply(number.getAsDouble()) : UNKNOWN;
  }

  private void together(String words) {
    page.heading("SIZES, PUMPS AND VALVES TOGETHER");
    page.paragraph(words);
  }

  /** What stands over those that meet all that is listed; that is not all where room is little. */
  private String all(List<Remedy> mending) {
    return mending.stream().anyMatch(remedy -> RoomWords.areLittle(remedy.rooms()))
        ? "MEET THE NEEDS ABOVE"
        : answer.needs().stream().allMatch(Need::isOfTarget)
            ? "MEET EVERY TARGET"
            : "MEET EVERY NEED";
  }

  private void conditions(JudgingConditions judging) {
    page.table(ChangesText.table(judging.conditions()));
    page.paragraph(
        "A change meets a target only if the fall gets it as written and 100 % or more in each of"
            + " these conditions. Figures are of the file as written.");
    if (judging.offered()) {
      ChangesText.offer(page);
    }
  }

  private void cannot() {
    List<String> sentences = FirstWords.alsoOf(answer);
    if (!sentences.isEmpty()) {
      page.heading("NOT ENOUGH ALONE, AND WHY");
      sentences.forEach(sentence -> page.marked("- ", sentence));
    }
  }

  /** What is wrong as it stands and no need: it may be why nothing helps. */
  private void alsoWrong() {
    Findings.of(answer.state()).stream()
        .filter(it -> it.severity() == Severity.PROBLEM)
        .filter(it -> answer.needs().stream().noneMatch(need -> need.tells(it)))
        .forEach(it -> page.marked("! ", it.message(units)));
  }

  private void first(List<Remedy> mending) {
    if (mending.isEmpty()) {
      page.marked("! ", NOTHING_MENDS);
      return;
    }
    page.paragraph("For the whole answer with one of these changes, give it to any command:", "");
    int number = 0;
    for (Remedy remedy : shown(mending, MOST_SET)) {
      number++;
      List<String> set = remedy.candidate().set().stream().map(MendText::option).toList();
      page.paragraph(number + ": " + String.join(" ", set), "");
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
                    "Another pump meets the targets too if it makes "
                        + units.flow(throttled.flowM3PerS())
                        + " at "
                        + units.head(throttled.headM())
                        + leastShutOff()
                        + FirstWords.with(answer)
                        + "."));
  }

  private String leastShutOff() {
    return answer
        .duty()
        .flatMap(duty -> duty.duty().leastShutOff())
        .map(least -> " and more than " + units.head(least.headM()) + " at no flow")
        .orElse("");
  }
}
