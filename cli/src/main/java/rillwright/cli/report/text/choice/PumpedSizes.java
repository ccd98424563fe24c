package rillwright.cli.report.text.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rillwright.cli.report.choice.JudgedWords;
import rillwright.cli.report.choice.NotNeeded;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.solver.network.PointName;
import rillwright.solver.study.pipechoice.RatedPipe;
import rillwright.solver.trial.RunningPoint;
import rillwright.solver.trial.Verdict;

/** Sizes with their pumps. */
final class PumpedSizes extends SizesText<RatedPipe> {
  private static final String UNKNOWN = "not known";

  /** Less than this share of a flow is noticeably less of it. */
  private static final double NOTICEABLE_SHARE = 0.99;

  private final PipesAnswer answer;
  private final PaybackWords paybacks;
  private final boolean onePump;
  private final boolean byPipe;
  private final FallCells falls;

  PumpedSizes(PipesAnswer answer) {
    super(answer);
    this.answer = answer;
    this.paybacks = new PaybackWords(answer, sizes);
    this.onePump = rows.stream().allMatch(rated -> rated.hasThePumpOf(rows.get(0)));
    this.byPipe = answer.choice().isOfOnePump();
    this.falls = new FallCells(rows.get(0).demand().targets(), units, onePump ? 2 : 1);
  }

  @Override
  String driven() {
    return onePump
        ? ", all with " + pump(rows.get(0)) + "."
        : ", each with its own cheapest pump or speed.";
  }

  private String pump(RatedPipe rated) {
    return SetupWords.of(rated.pump().trial().setup(), units);
  }

  private JudgedWords judged(RatedPipe rated) {
    return new JudgedWords(units, rated.demand(), rated.pump());
  }

  @Override
  void addColumns(TableBuilder table) {
    falls.addColumns(table);
    if (!onePump) {
      table.column("pump", Side.LEFT);
    }
    table.column("pipe cost", Side.RIGHT);
    if (!byPipe) {
      table.column(units.number(answer.terms().years()) + "-year cost", Side.RIGHT);
    }
  }

  @Override
  List<Cell> cells(RatedPipe rated) {
    List<Cell> cells = new ArrayList<>(falls.cells(rated.pump().trial()));
    if (!onePump) {
      cells.add(Cell.of(pump(rated)));
    }
    cells.add(Cell.of(money.amount(rated.option().materialCost())));
    if (!byPipe) {
      cells.add(Cell.of(money.cost(rated, marksPumps())));
    }
    return cells;
  }

  /** Whether a cost without the pump is marked: not where all run the one that there is. */
  private boolean marksPumps() {
    return answer.pumpsFree();
  }

  @Override
  String brief(RatedPipe rated) {
    return judged(rated).brief();
  }

  @Override
  String full(RatedPipe rated) {
    return judged(rated).full();
  }

  @Override
  boolean isThrottled(RatedPipe rated) {
    return rated.meetsTargets() && rated.isThrottled();
  }

  @Override
  void addTo(ConditionTables tables, RatedPipe rated) {
    tables.row(sizes.cell(rated.option()), rated.pump());
  }

  @Override
  void besideTheTable() {
    costs.speeds(
        rows.stream().map(rated -> rated.pump().trial().setup()), answer.conditions().isPresent());
    boolean unpriced =
        rows.stream()
            .anyMatch(
                rated -> rated.meetsTargets() && rated.pump().trial().setup().price().isEmpty());
    if (unpriced && !byPipe) {
      costs.unpricedPumps(marksPumps(), false);
    }
  }

  @Override
  void running() {
    page.table(pumps());
  }

  private TableBuilder pumps() {
    TableBuilder table =
        new TableBuilder("PUMP")
            .column("head", Side.RIGHT)
            .column("draws", Side.RIGHT)
            .column("energy a year", Side.RIGHT);
    if (!onePump) {
      table.column("paid back", Side.LEFT);
    }
    for (RatedPipe rated : rows) {
      RunningPoint point = rated.pump().trial().inUse();
      Stream<String> cells =
          Stream.of(
              units.head(point.headM()),
              point.powerW().isPresent() ? units.power(point.powerW().getAsDouble()) : UNKNOWN,
              money.energy(rated.pump().energyKwhPerYear()),
              paybacks.cell(rated));
      table.row(sizes.cell(rated.option()), cells.limit(onePump ? 3 : 4).map(Cell::of).toList());
    }
    return table;
  }

  @Override
  String first(RatedPipe least) {
    boolean priced = least.option().materialCost().isPresent();
    boolean othersUnpriced =
        answer.choice().ranked().stream()
            .anyMatch(rated -> rated.meetsTargets() && rated.option().materialCost().isEmpty());
    if (byPipe ? !priced : least.costOverYears().isEmpty()) {
      return "Narrowest of " + MEET + (priced && othersUnpriced ? " and have a price" : "");
    }
    if (byPipe) {
      return "Least pipe cost of " + MEET + (othersUnpriced ? " and have a price" : "");
    }
    return "Least cost of " + MEET + (priced ? "" : ", without the pipe");
  }

  @Override
  String at(RatedPipe rated) {
    String years =
        byPipe ? " for the pipe" : " over " + units.number(answer.terms().years()) + " years";
    return " with "
        + pump(rated)
        + (cost(rated).isEmpty()
            ? ""
            : ", "
                + (byPipe ? money.amount(cost(rated)) : money.cost(rated, marksPumps()))
                + years);
  }

  /** The cost by which those that meet the targets are ranked. */
  private OptionalDouble cost(RatedPipe rated) {
    return byPipe ? rated.option().materialCost() : rated.costOverYears();
  }

  @Override
  String year(RatedPipe least) {
    return YearWords.of(answer.year(), least.pump().trial(), units, answer.currency());
  }

  /** ", 30 EUR more" where both costs are known. */
  @Override
  String more(RatedPipe least, RatedPipe second) {
    OptionalDouble first = cost(least);
    OptionalDouble next = cost(second);
    if (first.isEmpty() || next.isEmpty()) {
      return "";
    }
    double difference = next.getAsDouble() - first.getAsDouble();
    return difference < 1
        ? ", at the same cost"
        : ", " + money.amount(OptionalDouble.of(difference)) + " more";
  }

  @Override
  String pays(RatedPipe least, RatedPipe next) {
    return takesFromTheWorst(least, next)
        ? "The larger pipe serves the other falls first: run \"rillwright balance\" to set their"
            + " valves."
        : paybacks.sentence(least, next);
  }

  /**
   * Whether with one and the same pump the fall that gets the least of its target gets less by the
   * larger pipe.
   */
  private static boolean takesFromTheWorst(RatedPipe least, RatedPipe next) {
    PointName worst = least.pump().trial().verdict().worst();
    double was = least.state().point(worst).outflowM3PerS();
    return least.hasThePumpOf(next)
        && next.state().point(worst).outflowM3PerS() < NOTICEABLE_SHARE * was;
  }

  /** The flow is what the larger pipe buys, so it is with the valves as they stand. */
  @Override
  String buys(RatedPipe least, RatedPipe next) {
    if (eachWithItsPump(least, next)) {
      return "meet the targets with " + pump(next) + draws(least, next);
    }
    return gives(least.pump().trial().verdict().worst(), least, next)
        + (least.hasThePumpOf(next) ? "" : " with " + pump(next))
        + draws(least, next);
  }

  private String draws(RatedPipe least, RatedPipe next) {
    OptionalDouble before = point(least, next, least).powerW();
    OptionalDouble after = point(least, next, next).powerW();
    if (before.isEmpty() || after.isEmpty()) {
      return "";
    }
    String was = units.power(before.getAsDouble());
    String is = units.power(after.getAsDouble());
    return was.equals(is)
        ? ", and draw " + is + " as before"
        : ", and draw " + is + " instead of " + was;
  }

  @Override
  boolean isAsTheyStand(RatedPipe least, RatedPipe next) {
    return (least.isThrottled() || next.isThrottled()) && !eachWithItsPump(least, next);
  }

  private RunningPoint point(RatedPipe least, RatedPipe next, RatedPipe of) {
    return isAsTheyStand(least, next) ? of.pump().trial().operating() : of.pump().trial().inUse();
  }

  private static boolean eachWithItsPump(RatedPipe least, RatedPipe next) {
    return !least.hasThePumpOf(next) && least.meetsTargets() && next.meetsTargets();
  }

  @Override
  void none(RatedPipe nearest) {
    if (nearest.pump().trial().verdict().kind() == Verdict.Kind.NOT_NEEDED) {
      page.marked("! ", NotNeeded.sentence(answer.duty().network(), answer.duty().place()));
    } else {
      super.none(nearest);
    }
  }

  @Override
  String change(RatedPipe nearest) {
    return judged(nearest).change()
        + (answer.pumpsFree() ? "" : " A folder of data sheets lets each size have its own pump.");
  }

  @Override
  String pricesMean() {
    return onePump ? "" : paybacks.legend();
  }

  @Override
  void runningNotes() {
    if (byPipe) {
      paybacks.samePump(page, cost(rows.get(0)).isPresent());
      costs.electricity(answer.terms());
    } else {
      costs.electricity(
          answer.terms(),
          answer.pumpsFree()
              ? "size, the narrower first, and each one's pumps by energy"
              : "size, the narrower first",
          ", the pump and the pipe, as far as they have a price; service is not counted.");
      paybacks.sharedPumps(rows).forEach(page::paragraph);
    }
    SiteCautions.printFilling(answer.job(), page);
  }

  @Override
  void leftOut() {
    costs.otherCurrencies(answer.otherCurrencies());
    costs.notTried(answer.faults(), answer.choice().leftOut());
    if (rows.stream().anyMatch(rated -> rated.pump().trial().setup().count() > 1)) {
      page.paragraph(SiteCautions.SEVERAL_PUMPS);
    }
  }
}
