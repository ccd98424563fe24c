package rillwright.cli.report.text.choice;

import java.util.List;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.PumpTrial;

/** What the falls with a target get: a column for each of a few, or one for the worst of more. */
final class FallCells {
  private final Targets targets;
  private final ShownUnits units;
  private final int mostColumns;

  /** Cells that take up to two columns. */
  FallCells(Targets targets, ShownUnits units) {
    this(targets, units, 2);
  }

  FallCells(Targets targets, ShownUnits units, int mostColumns) {
    this.mostColumns = mostColumns;
    this.targets = targets;
    this.units = units;
  }

  private boolean each() {
    return targets.flowM3PerS().size() <= mostColumns;
  }

  void addColumns(TableBuilder table) {
    if (each()) {
      targets.falls().forEach(fall -> table.column(fall.value(), Side.RIGHT));
    } else {
      table.column("worst fall", Side.RIGHT);
    }
  }

  /** Of a pump as it would run day by day: throttled, if it meets the targets so. */
  List<Cell> cells(PumpTrial trial) {
    SteadyState state = trial.stateInUse();
    PointName worst = targets.worstIn(state);
    return cells(state, worst, targets.shareAt(worst, state));
  }

  List<Cell> cells(SteadyState state, PointName worst, double leastFraction) {
    return each()
        ? targets.falls().stream().map(fall -> Cell.of(gets(fall, state))).toList()
        : List.of(Cell.of(worst.value() + " " + units.share(leastFraction)));
  }

  private String gets(PointName fall, SteadyState state) {
    double flow = state.point(fall).outflowM3PerS();
    return flow == 0 ? "dry" : units.flow(flow) + " " + units.share(targets.shareAt(fall, state));
  }
}
