package rillwright.cli.report.text.visit;

import java.util.Set;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.Feeders;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** How far the water in chambers stands below, or above, the open water that feeds them. */
final class LevelReadings {
  /** Error of a level read with a ruler, m; common practice, no source. */
  private static final double LEVEL_M = 0.003;

  private LevelReadings() {}

  static void add(Solved solved, TableBuilder table, Set<Hint> hints) {
    SteadyState state = solved.state();
    for (PointState point : state.points()) {
      if (point.point() instanceof Chamber chamber && point.headM().isPresent()) {
        for (Basin basin : Feeders.listBasins(state.network(), chamber)) {
          double below = basin.levelM() - point.headM().getAsDouble();
          row(table, Shown.of(solved), chamber.name(), basin.name(), below);
          hints.add(Hint.OPEN_WATER);
        }
      }
    }
  }

  private static void row(
      TableBuilder table, ShownUnits units, PointName chamber, PointName basin, double below) {
    double apart = Math.abs(below);
    table.row(
        chamber.value(),
        (below < 0 ? "level above \"" : "level below \"") + basin.value() + "\"",
        units.tools().ruler().with(apart),
        units.tools().ruler().between(Math.max(0, apart - LEVEL_M), apart + LEVEL_M));
  }
}
