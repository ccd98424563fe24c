package rillwright.cli.report.text.conditions;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.conditions.SharedFinding;
import rillwright.cli.report.conditions.SharedFinding.Made;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.SolvedConditions;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Point;
import rillwright.solver.steady.PointState;

/** A project in several conditions, on one page. */
public final class ConditionsText {
  private static final String NONE = "";
  private static final String UNKNOWN = "not known";

  /** More falls than this do not fit beside each other; then each has a table of its own. */
  private static final int MOST_COLUMNS = 3;

  /** Findings that the verdict tells. */
  private static final List<String> SHOWN_ALREADY = List.of("under-target", "dry");

  private final SolvedConditions answer;
  private final ShownUnits units;
  private final PageBuilder page;

  private ConditionsText(SolvedConditions answer) {
    this.answer = answer;
    this.units = Shown.of(answer.solved());
    this.page = ChangedWords.page(answer.solved().title(), answer.solved().changes());
  }

  /** The page. */
  public static Page of(SolvedConditions answer) {
    return new ConditionsText(answer).print();
  }

  private Page print() {
    List<Point> falls = answer.falls();
    for (int first = 0; first < falls.size(); first += MOST_COLUMNS) {
      page.table(flows(falls.subList(first, Math.min(falls.size(), first + MOST_COLUMNS))));
    }
    page.table(pumps());
    page.table(ChangesText.table(answer.solved().conditions()));
    page.heading("WARNINGS AND NOTES");
    verdict();
    warnings();
    if (answer.solved().offered()) {
      ChangesText.offer(page);
    }
    return page.build();
  }

  private TableBuilder flows(List<Point> falls) {
    TableBuilder table = new TableBuilder("CONDITIONS");
    for (Point fall : falls) {
      table.column(fall.name().value(), Side.RIGHT).column("of target", Side.RIGHT);
    }
    for (Case<Solved> one : answer.cases()) {
      List<Cell> cells = new ArrayList<>();
      for (Point fall : falls) {
        boolean targeted = fall.targetM3PerS().isPresent();
        cells.add(Cell.of(answer.point(fall.name(), one).map(this::flow).orElse("no balance")));
        cells.add(targeted ? share(one, fall) : Cell.of(NONE));
      }
      table.row(one.condition(), cells);
    }
    return table;
  }

  private String flow(PointState state) {
    return state.outflowM3PerS() == 0 ? "dry" : units.flow(state.outflowM3PerS());
  }

  private Cell share(Case<Solved> one, Point fall) {
    return one.answer().isEmpty()
        ? Cell.of(NONE)
        : new Cell(
            units.share(answer.targetFraction(fall.name(), one)),
            answer.isUnderTarget(fall.name(), one) ? Tone.WARNING : Tone.GOOD);
  }

  private TableBuilder pumps() {
    TableBuilder table =
        new TableBuilder("RUNNING")
            .column("pumps draw", Side.RIGHT)
            .column("kWh a year", Side.RIGHT)
            .column("wire-to-water", Side.RIGHT)
            .column("chambers", Side.LEFT);
    for (Case<Solved> one : answer.cases()) {
      if (one.answer().isPresent()) {
        Solved solved = one.answer().get();
        RunningFigures running = solved.takes();
        boolean known = running.powerW().isPresent();
        table.row(
            one.condition(),
            known ? units.power(running.powerW().getAsDouble()) : UNKNOWN,
            known ? units.amount(running.energyKwhPerYear().getAsDouble()) : UNKNOWN,
            running.wireToWater().isPresent()
                ? units.share(running.wireToWater().getAsDouble())
                : UNKNOWN,
            ChamberWords.of(solved));
      } else {
        table.row(one.condition(), UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN);
      }
    }
    return table;
  }

  private void verdict() {
    for (Point fall : answer.targeted()) {
      Case<Solved> worst = answer.worstFor(fall.name());
      String name = "\"" + fall.name().value() + "\" ";
      String target = units.writtenFlow(fall.targetM3PerS().getAsDouble());
      if (worst.answer().isEmpty()) {
        page.marked("! ", name + "is not known for \"" + worst.condition() + "\".");
        continue;
      }
      String flow = flow(answer.point(fall.name(), worst).orElseThrow());
      boolean under = answer.isUnderTarget(fall.name(), worst);
      page.marked(
          under ? "! " : "",
          name
              + "is lowest in \""
              + worst.condition()
              + "\": "
              + flow
              + ", "
              + units.share(answer.targetFraction(fall.name(), worst))
              + " of its target of "
              + target
              + (under ? "." : ", so it gets its target in every condition."));
    }
  }

  /** Why there is no balance, and what is found in a condition that is not found as written. */
  private void warnings() {
    List<SharedFinding<Solved>> findings = SharedFinding.listOf(answer.solved(), Solved::findings);
    if (findings.stream().anyMatch(SharedFinding::holdsAsWritten)) {
      page.paragraph("Run \"rillwright solve\" for the warnings of the file as written.");
    }
    ChangesText.noBalance(answer.solved(), page);
    for (SharedFinding<Solved> found : findings) {
      if (!SHOWN_ALREADY.contains(found.code()) && !found.holdsAsWritten()) {
        Made<Solved> worst = found.first(answer.worstFirst());
        page.marked("! ", found.sentence(worst, units));
      }
    }
  }
}
