package rillwright.cli.report.text.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.choice.JudgedWords;
import rillwright.cli.report.choice.NotNeeded;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.PumpsAnswer;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.solver.pumping.HeadNeeded;
import rillwright.solver.study.duty.Duty;
import rillwright.solver.trial.ConditionTrial;
import rillwright.solver.trial.FarFromBest;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.RunningPoint;
import rillwright.solver.trial.Verdict;

/** Pumps tried, on one page. */
public final class PumpsText {
  /** Rows of a table; the rest is shown by number. */
  private static final int MOST_ROWS = 12;

  private static final String UNKNOWN = "not known";

  private final PumpsAnswer answer;
  private final ShownUnits units;
  private final FallCells falls;
  private final MoneyWords money;
  private final PageBuilder page;

  private PumpsText(PumpsAnswer answer) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.falls = new FallCells(answer.choice().demand().targets(), units);
    this.money = new MoneyWords(units, answer.currency());
    this.page = ChangedWords.page(answer.duty().title(), answer.changes());
  }

  /** The page. */
  public static Page of(PumpsAnswer answer) {
    return new PumpsText(answer).print();
  }

  private Page print() {
    List<RatedTrial> ranked = answer.choice().ranked();
    List<RatedTrial> does = ranked.stream().filter(RatedTrial::meetsTargets).toList();
    List<RatedTrial> others = ranked.stream().filter(rated -> !rated.meetsTargets()).toList();
    demand();
    if (!does.isEmpty()) {
      page.table(doing(first(does)));
      more(does);
      boolean accepts = first(does).stream().anyMatch(it -> judged(it).accepts());
      PumpNotes.besideTheTable(answer, first(does), accepts, page);
      page.table(running(first(does)));
    }
    if (!others.isEmpty()) {
      page.table(notDoing(first(others)));
      more(others);
    }
    answer.conditions().ifPresent(judging -> conditions(judging, does, others));
    page.heading("WARNINGS AND NOTES");
    notes(does);
    return page.build();
  }

  private void conditions(
      JudgingConditions judging, List<RatedTrial> does, List<RatedTrial> others) {
    ConditionTables tables = new ConditionTables(judging, units, page);
    first(does).forEach(rated -> tables.row(SetupWords.of(rated.trial().setup(), units), rated));
    first(others).forEach(rated -> tables.row(SetupWords.of(rated.trial().setup(), units), rated));
    tables.print();
  }

  private JudgedWords judged(RatedTrial rated) {
    return new JudgedWords(units, answer.choice().demand(), rated);
  }

  private static List<RatedTrial> first(List<RatedTrial> all) {
    return all.subList(0, Math.min(MOST_ROWS, all.size()));
  }

  private void more(List<RatedTrial> all) {
    if (all.size() > MOST_ROWS) {
      String more = "and " + (all.size() - MOST_ROWS) + " more";
      page.paragraph(
          more + "; the answer for programs (\"--format json\") has them all.", more + ".");
    }
  }

  private void demand() {
    page.space();
    Optional<Duty.AsTheyStand> stand = answer.duty().duty().asTheyStand();
    Optional<Duty.Throttled> throttled = answer.duty().duty().throttled();
    if (answer.choice().demand().asksNothingThrottled()) {
      page.marked(
          "! ",
          NotNeeded.sentence(answer.duty().network(), answer.duty().place())
              + (answer.conditions().isPresent()
                  ? " This is the file as written; the conditions are below."
                  : ""));
      stand.ifPresent(
          at ->
              page.paragraph(
                  "With the valves as they stand it must make "
                      + units.flow(at.flowM3PerS())
                      + atHead(at.headM())
                      + "."));
      return;
    }
    String line = "\"" + answer.duty().place().line().value() + "\"";
    boolean startsByItself = answer.duty().duty().leastShutOff().isEmpty();
    if (startsByItself && stand.isPresent() && stand.get().headM() <= 0) {
      page.marked(
          "! ",
          "No pump is needed in " + line + ": the difference in level alone drives the water.");
      return;
    }
    String where = "The pump in " + line + " must make ";
    if (stand.isPresent() && throttled.isPresent()) {
      boolean same = stand.get().flowM3PerS() < 1.02 * throttled.get().flowM3PerS();
      page.paragraph(
          where
              + units.flow(stand.get().flowM3PerS())
              + atHead(stand.get().headM())
              + (same
                  ? "."
                  : " with the valves as they stand, or "
                      + units.flow(throttled.get().flowM3PerS())
                      + atHead(throttled.get().headM())
                      + " with the easier falls throttled.")
              + inConditions());
    } else {
      page.marked("! ", PumpNotes.outOfReach(answer));
    }
  }

  /** What the hardest condition asks; nothing without conditions. */
  private String inConditions() {
    return answer.choice().ranked().stream()
        .limit(1)
        .flatMap(rated -> rated.conditions().stream())
        .filter(tried -> tried.demand().throttled().isPresent())
        .max(Comparator.comparingDouble(tried -> needed(tried).headM()))
        .map(
            tried ->
                " That is of the file as written; the most that a condition asks is "
                    + units.flow(needed(tried).flowM3PerS())
                    + atHead(needed(tried).headM())
                    + ", "
                    + JudgedWords.in(tried.condition())
                    + ". A pump counts only if it meets the target in every condition tried.")
        .orElse("");
  }

  private static HeadNeeded needed(ConditionTrial tried) {
    return tried.demand().throttled().orElseThrow().needed();
  }

  /** Water that runs down by itself asks for none. */
  private String atHead(double headM) {
    return headM > 0 ? " at " + units.head(headM) : " without any head";
  }

  private TableBuilder doing(List<RatedTrial> rows) {
    TableBuilder table = new TableBuilder("MEET THE TARGET");
    falls.addColumns(table);
    table
        .column("draws", Side.RIGHT)
        .column("energy a year", Side.RIGHT)
        .column(units.number(answer.terms().years()) + "-year cost", Side.RIGHT)
        .column("verdict", Side.LEFT);
    for (RatedTrial rated : rows) {
      PumpTrial trial = rated.trial();
      List<Cell> cells = new ArrayList<>(falls.cells(trial));
      cells.add(Cell.of(power(trial.inUse().powerW())));
      cells.add(Cell.of(money.energy(rated.energyKwhPerYear())));
      cells.add(Cell.of(money.cost(rated, somePriced(rows))));
      cells.add(new Cell(judged(rated).brief(), Tone.GOOD));
      table.row(SetupWords.of(trial.setup(), units), cells);
    }
    return table;
  }

  private static boolean somePriced(List<RatedTrial> rows) {
    return rows.stream().anyMatch(rated -> rated.trial().setup().price().isPresent());
  }

  private String power(OptionalDouble powerW) {
    return powerW.isPresent() ? units.power(powerW.getAsDouble()) : UNKNOWN;
  }

  private TableBuilder running(List<RatedTrial> rows) {
    TableBuilder table =
        new TableBuilder("OPERATING POINTS")
            .column("flow", Side.RIGHT)
            .column("head", Side.RIGHT)
            .column("of range", Side.RIGHT)
            .column("of best", Side.RIGHT)
            .column("wire-to-water", Side.RIGHT)
            .column("price", Side.RIGHT)
            .column("warnings", Side.LEFT);
    for (RatedTrial rated : rows) {
      PumpTrial trial = rated.trial();
      RunningPoint point = trial.inUse();
      table.row(
          SetupWords.of(trial.setup(), units),
          units.flow(point.flowM3PerS()),
          units.head(point.headM()),
          units.share(trial.shareOfRange(point)),
          share(trial.shareOfBestEfficiencyFlow(point)),
          share(point.wireToWater()),
          money.price(trial.setup().price()),
          FindingCell.of(trial.findings()));
    }
    return table;
  }

  private String share(OptionalDouble share) {
    return share.isPresent() ? units.share(share.getAsDouble()) : UNKNOWN;
  }

  private TableBuilder notDoing(List<RatedTrial> rows) {
    TableBuilder table = new TableBuilder(notNeeded(rows) ? "NOT NEEDED" : "FALL SHORT");
    falls.addColumns(table);
    table.column("verdict", Side.LEFT).column("change needed", Side.LEFT);
    for (RatedTrial rated : rows) {
      PumpTrial trial = rated.trial();
      List<Cell> cells = new ArrayList<>(falls.cells(trial));
      cells.add(new Cell(judged(rated).brief(), Tone.WARNING));
      cells.add(Cell.of(change(rated)));
      table.row(SetupWords.of(trial.setup(), units), cells);
    }
    return table;
  }

  private String change(RatedTrial rated) {
    PumpSetup setup = rated.trial().setup();
    return answer.choice().ranked().stream()
        .filter(RatedTrial::meetsTargets)
        .map(it -> it.trial().setup())
        .filter(it -> it.speed() > setup.speed() && it.atSpeed(setup.speed()).equals(setup))
        .findFirst()
        .map(it -> "Run it at " + units.share(it.speed()) + " speed: it meets the target then.")
        .orElseGet(() -> judged(rated).change());
  }

  private static boolean notNeeded(List<RatedTrial> rows) {
    return rows.stream()
        .allMatch(rated -> rated.trial().verdict().kind() == Verdict.Kind.NOT_NEEDED);
  }

  private void notes(List<RatedTrial> does) {
    if (notNeeded(answer.choice().ranked())) {
      page.paragraph(PumpNotes.THROTTLE);
    } else if (does.isEmpty()) {
      page.marked(
          "! ",
          answer.duty().duty().throttled().isPresent()
              ? PumpNotes.NONE_DOES
              : PumpNotes.NO_PUMP_WOULD);
    } else {
      RatedTrial best = does.get(0);
      page.paragraph(
          "Ranked first: "
              + SetupWords.of(best.trial().setup(), units)
              + ", "
              + judged(best).full()
              + "."
              + YearWords.of(answer.year(), best.trial(), units, answer.currency()));
      FindingCell.besideTheVerdict(best.trial().findings())
          .forEach(finding -> page.marked("! ", finding.message(units)));
      if (best.trial().findings().stream().anyMatch(FarFromBest::isIt)) {
        PumpNotes.drawingLess(best, does, units).ifPresent(page::paragraph);
      }
    }
    answer.conditions().ifPresent(judging -> ConditionTables.note(judging, page));
    PumpNotes.print(answer, does, page);
  }
}
