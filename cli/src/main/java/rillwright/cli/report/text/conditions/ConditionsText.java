package rillwright.cli.report.text.conditions;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.RunningFigures;
import rillwright.cli.report.Solved;
import rillwright.cli.report.conditions.ConditionsAnswer;
import rillwright.cli.report.conditions.Outcome;
import rillwright.cli.report.conditions.SharedFinding;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.Ink;
import rillwright.cli.report.text.Ink.Tone;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.text.TextTable;
import rillwright.cli.report.text.TextTable.Cell;
import rillwright.cli.report.text.TextTable.Side;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.Point;
import rillwright.solver.steady.PointState;

/** A project in several conditions, on one page. */
public final class ConditionsText {
  private static final String NONE = "-";

  /** More falls than this do not fit beside each other; then each has a table of its own. */
  private static final int MOST_COLUMNS = 3;

  /** Findings that the verdict tells. */
  private static final List<String> TOLD_ALREADY = List.of("under-wish", "dry");

  private final ConditionsAnswer answer;
  private final ShownUnits units;
  private final Page page;

  private ConditionsText(ConditionsAnswer answer, Page page) {
    this.answer = answer;
    this.units = answer.units();
    this.page = page;
  }

  /** The page. */
  public static String of(ConditionsAnswer answer, Ink ink) {
    Page page = new Page(ink);
    new ConditionsText(answer, page).print();
    return page.toString();
  }

  private void print() {
    page.title(answer.title());
    ChangedWords.print(answer.changes(), page);
    List<Point> falls = answer.falls();
    for (int first = 0; first < falls.size(); first += MOST_COLUMNS) {
      page.table(flows(falls.subList(first, Math.min(falls.size(), first + MOST_COLUMNS))));
    }
    page.table(pumps());
    page.table(ChangesText.table(answer.outcomes().stream().map(Outcome::named).toList()));
    page.heading("WHAT TO KNOW");
    verdict();
    warnings();
    if (answer.offered()) {
      ChangesText.offer(page);
    }
  }

  private TextTable flows(List<Point> falls) {
    TextTable table = new TextTable("CONDITIONS");
    for (Point fall : falls) {
      table.column(fall.name().value(), Side.RIGHT).column("of wish", Side.RIGHT);
    }
    for (Outcome outcome : answer.outcomes()) {
      List<Cell> cells = new ArrayList<>();
      for (Point fall : falls) {
        boolean wished = fall.wantM3PerS().isPresent();
        cells.add(Cell.of(outcome.point(fall.name()).map(this::flow).orElse("no balance")));
        cells.add(wished ? share(outcome, fall) : Cell.of(NONE));
      }
      table.row(outcome.condition(), cells);
    }
    return table;
  }

  private String flow(PointState state) {
    return state.outflowM3PerS() == 0 ? "dry" : units.flow(state.outflowM3PerS());
  }

  private Cell share(Outcome outcome, Point fall) {
    return outcome.solved().isEmpty()
        ? Cell.of(NONE)
        : new Cell(
            units.share(outcome.shareOfWish(fall.name())),
            outcome.isUnderWish(fall.name()) ? Tone.WARNING : Tone.GOOD);
  }

  private TextTable pumps() {
    TextTable table =
        new TextTable("RUNNING")
            .column("pumps draw", Side.RIGHT)
            .column("kWh a year", Side.RIGHT)
            .column("wire to water", Side.RIGHT)
            .column("chambers", Side.LEFT);
    for (Outcome outcome : answer.outcomes()) {
      if (outcome.solved().isPresent()) {
        Solved solved = outcome.solved().get();
        RunningFigures running = RunningFigures.of(solved.state(), solved.running());
        boolean known = running.powerW().isPresent();
        table.row(
            outcome.condition(),
            known ? units.power(running.powerW().getAsDouble()) : NONE,
            known ? units.amount(running.energyKwhPerYear().getAsDouble()) : NONE,
            running.wireToWater().isPresent()
                ? units.share(running.wireToWater().getAsDouble())
                : NONE,
            ChamberWords.of(solved));
      } else {
        table.row(outcome.condition(), NONE, NONE, NONE, NONE);
      }
    }
    return table;
  }

  private void verdict() {
    for (Point fall : answer.wished()) {
      Outcome worst = answer.worstFor(fall.name());
      String name = "\"" + fall.name().value() + "\" ";
      String wish = units.writtenFlow(fall.wantM3PerS().getAsDouble());
      if (worst.solved().isEmpty()) {
        page.marked("! ", name + "cannot be told of \"" + worst.condition() + "\".");
        continue;
      }
      String flow = flow(worst.point(fall.name()).orElseThrow());
      boolean under = worst.isUnderWish(fall.name());
      page.marked(
          under ? "! " : "",
          name
              + "is worst off in \""
              + worst.condition()
              + "\": "
              + flow
              + ", "
              + units.share(worst.shareOfWish(fall.name()))
              + " of the "
              + wish
              + " wished"
              + (under ? "." : ", so it gets its wish in all of them."));
    }
  }

  /** Why there is no balance, and what is found in a condition that is not found as written. */
  private void warnings() {
    List<SharedFinding> findings = SharedFinding.listOf(answer);
    if (findings.stream().anyMatch(SharedFinding::holdsAsWritten)) {
      page.paragraph(
          "What \"rillwright solve\" tells of the file as written is not told again here.");
    }
    for (Outcome outcome : answer.outcomes()) {
      outcome
          .noBalance()
          .ifPresent(why -> page.marked("! ", "In \"" + outcome.condition() + "\": " + why));
    }
    for (SharedFinding found : findings) {
      if (!TOLD_ALREADY.contains(found.finding().code()) && !found.holdsAsWritten()) {
        page.marked("! ", "In " + found.conditions() + figuresOf(found) + message(found));
      }
    }
  }

  private String message(SharedFinding found) {
    return found.finding().message(units);
  }

  /** Of which of several conditions the figures are, where they are not those of all. */
  private String figuresOf(SharedFinding found) {
    boolean alike =
        found.outcomes().stream()
            .flatMap(outcome -> outcome.solved().orElseThrow().findings().stream())
            .filter(found::isThatOf)
            .allMatch(finding -> finding.message(units).equals(message(found)));
    return alike ? ": " : " (figures of \"" + found.worst().condition() + "\"): ";
  }
}
