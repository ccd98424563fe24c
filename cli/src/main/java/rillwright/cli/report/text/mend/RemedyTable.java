package rillwright.cli.report.text.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import rillwright.cli.report.mend.RemedyWords;
import rillwright.cli.report.mend.RoomWords;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.units.NearLimit;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.site.Room;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.network.Point;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.Verdict;

/** Remedies, one a row: what every fall gets then, watts and money. */
final class RemedyTable {
  private static final String COSTS =
      "Costs: what is bought once, and the trench where one is dug; \"?\" stands for what has no"
          + " price in the file. ";

  private static final String ORDER =
      "Order: what meets more needs; what leaves the crests as they are; what costs nothing and"
          + " needs"
          + " no digging; then by the cost over %d years%s; last what has no full price, the least"
          + " work first, then by what is known of its cost.";

  /** More falls than this have their shares only. */
  private static final int FEW_FALLS = 2;

  /** What is to be done takes a line of its own where it is longer. */
  private static final int LONGEST_NAME = 36;

  private static final String UNKNOWN = "not known";
  private static final String NOT_PRICED = "?";

  private final MendAnswer answer;
  private final ShownUnits units;
  private final List<Point> falls;
  private final boolean isPumped;
  private final boolean saysRooms;

  RemedyTable(MendAnswer answer) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.isPumped = answer.state().network().isPumped();
    this.saysRooms = RoomWords.areSaid(answer);
    this.falls = answer.falls();
  }

  /** What the columns mean. */
  String legend() {
    return COSTS
        + (isPumped ? "Electricity: that of a year. " : "")
        + ORDER.formatted(Math.round(answer.years()), isPumped ? ", electricity included" : "")
        + (saysRooms ? RoomWords.legend(answer) : "");
  }

  /** The table, what stands today first; empty if there are none. */
  TableBuilder of(String heading, List<Remedy> rows) {
    return of(heading, rows, false);
  }

  /** The same, with what each leaves in need. */
  TableBuilder leaving(String heading, List<Remedy> rows) {
    return of(heading, rows, true);
  }

  private TableBuilder of(String heading, List<Remedy> rows, boolean leaving) {
    TableBuilder table = new TableBuilder(heading, LONGEST_NAME);
    if (rows.isEmpty()) {
      return table;
    }
    falls.forEach(fall -> table.column(fall.name().value(), Side.RIGHT));
    if (isPumped) {
      table.column("draws", Side.RIGHT);
    }
    table.column("costs", Side.RIGHT);
    if (isPumped) {
      table.column("electricity", Side.RIGHT);
    }
    if (saysRooms) {
      table.column("room", Side.LEFT);
    }
    if (leaving) {
      table.column("leaves", Side.LEFT);
    }
    List<Cell> today =
        row(
            answer.state(),
            shown(answer.takes().powerW(), units::power),
            "nothing",
            money(answer.takes().costPerYear()),
            answer.rooms());
    table.row("as written", leaving ? with(today, NeedWords.of(answer.needs(), units)) : today);
    int number = 0;
    for (Remedy remedy : rows) {
      number++;
      List<Cell> then =
          row(
              remedy.state(),
              shown(remedy.powerW(), units::power),
              price(remedy.candidate()),
              money(remedy.costPerYear()),
              remedy.rooms());
      table.row(
          number + ": " + RemedyWords.of(remedy.candidate(), answer.state().network(), units),
          leaving ? with(then, NeedWords.of(remedy.leaves(), units)) : then);
    }
    return table;
  }

  private List<Cell> row(
      SteadyState state, String power, String price, String year, List<Room> rooms) {
    List<Cell> cells = new ArrayList<>();
    for (Point fall : falls) {
      double flow = state.point(fall.name()).outflowM3PerS();
      double target = state.network().point(fall.name()).targetM3PerS().orElse(Double.NaN);
      String share = share(flow / target);
      String shown = falls.size() > FEW_FALLS ? share : units.flow(flow) + " " + share;
      cells.add(new Cell(shown, isMet(flow / target) ? Tone.GOOD : Tone.WARNING));
    }
    cells.addAll(
        isPumped
            ? List.of(Cell.of(power), Cell.of(price), Cell.of(year))
            : List.of(Cell.of(price)));
    if (saysRooms) {
      boolean little = RoomWords.areLittle(rooms);
      cells.add(new Cell(RoomWords.cell(rooms, units), little ? Tone.WARNING : Tone.PLAIN));
    }
    return cells;
  }

  /** What is a little too much or too little is not shown as what is still enough. */
  private String share(double share) {
    return share > Verdict.TOO_MUCH_SHARE
        ? NearLimit.above(share, Verdict.TOO_MUCH_SHARE, units)
        : share < 1 ? NearLimit.below(share, 1, units) : units.share(share);
  }

  private static List<Cell> with(List<Cell> cells, String last) {
    return Stream.concat(cells.stream(), Stream.of(Cell.of(last))).toList();
  }

  private static boolean isMet(double share) {
    return share >= 1 && share <= Verdict.TOO_MUCH_SHARE;
  }

  private static String shown(OptionalDouble number, DoubleFunction<String> words) {
    return number.isPresent() ? words.apply(number.getAsDouble()) : UNKNOWN;
  }

  /** "529 EUR + ?" where a part of it is known. */
  private String price(Candidate candidate) {
    double known = candidate.knownPrice();
    if (candidate.price().isPresent()) {
      return known == 0 ? "nothing" : money(candidate.price());
    }
    return known == 0 ? NOT_PRICED : money(OptionalDouble.of(known)) + " + " + NOT_PRICED;
  }

  private String money(OptionalDouble amount) {
    return shown(
        amount, it -> units.amount(it) + answer.currency().map(word -> " " + word).orElse(""));
  }
}
