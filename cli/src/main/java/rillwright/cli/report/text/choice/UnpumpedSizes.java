package rillwright.cli.report.text.choice;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.choice.GravityWords;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.study.choice.GravityAnswer;
import rillwright.solver.pumping.Targets;
import rillwright.solver.study.pipechoice.GravityPipe;

/** Sizes that water runs through of itself. */
final class UnpumpedSizes extends SizesText<GravityPipe> {
  private final GravityWords words;
  private final FallCells falls;

  UnpumpedSizes(GravityAnswer answer) {
    super(answer);
    this.words = new GravityWords(units);
    this.falls = new FallCells(Targets.of(rows.get(0).option().network()), units);
  }

  @Override
  String driven() {
    return ". There is no pump: the difference in level drives the water.";
  }

  @Override
  void addColumns(TableBuilder table) {
    falls.addColumns(table);
    table.column("pipe cost", Side.RIGHT);
  }

  @Override
  List<Cell> cells(GravityPipe pipe) {
    List<Cell> cells =
        new ArrayList<>(
            falls.cells(
                pipe.stateInUse(), pipe.run().inUse().worst(), pipe.run().inUse().leastFraction()));
    cells.add(Cell.of(money.amount(pipe.option().materialCost())));
    return cells;
  }

  @Override
  String brief(GravityPipe pipe) {
    return words.brief(pipe);
  }

  @Override
  String full(GravityPipe pipe) {
    return words.full(pipe);
  }

  @Override
  boolean isThrottled(GravityPipe pipe) {
    return pipe.run().throttled().isPresent();
  }

  @Override
  void addTo(ConditionTables tables, GravityPipe pipe) {
    tables.row(
        sizes.cell(pipe.option()),
        pipe.conditions().stream()
            .map(
                it ->
                    new ConditionTables.Gets(
                        it.run().isPresent(), false, it.leastFraction(), it.meetsTargets()))
            .toList());
  }

  @Override
  String first(GravityPipe least) {
    return (least.option().materialCost().isPresent() ? "Least cost of " : "Narrowest of ") + MEET;
  }

  @Override
  String at(GravityPipe pipe) {
    return pipe.option().materialCost().isPresent()
        ? ", " + money.amount(pipe.option().materialCost())
        : "";
  }

  @Override
  boolean isAsTheyStand(GravityPipe least, GravityPipe next) {
    return true;
  }

  @Override
  String buys(GravityPipe least, GravityPipe next) {
    return gives(least.run().asItStands().worst(), least, next);
  }

  @Override
  String pays(GravityPipe least, GravityPipe next) {
    return "Nothing is pumped, so it adds flow and saves nothing.";
  }

  @Override
  String change(GravityPipe nearest) {
    return "More difference in level, a larger pipe, fewer fittings or a pump is needed; where"
        + " another fall gets more than its target, throttle that (\"rillwright balance\").";
  }

  @Override
  String pricesMean() {
    return "";
  }
}
