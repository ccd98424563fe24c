package rillwright.cli.report.text.solve;

import java.util.OptionalDouble;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Tee;
import rillwright.solver.reading.GaugeReading;
import rillwright.solver.steady.PointState;

/** Pressures: what gauges read, and the total pressure at tees. */
final class GaugesTable {
  private GaugesTable() {}

  static void print(Solved solved, PageBuilder page) {
    ShownUnits units = Shown.of(solved);
    TableBuilder table =
        new TableBuilder("PRESSURES").column("running", Side.RIGHT).column("where", Side.LEFT);
    for (GaugeReading reading : GaugeReading.listIn(solved.state())) {
      String place =
          "gauge in \""
              + reading.line().value()
              + "\" at "
              + units.level(reading.gauge().elevationM());
      table.row(reading.gauge().name(), shown(reading.pressurePa(), units), place);
    }
    boolean anyTee = false;
    for (PointState state : solved.state().points()) {
      if (state.point() instanceof Tee tee && tee.elevationM().isPresent()) {
        anyTee = true;
        table.row(
            tee.name().value(),
            shown(tee.pressurePa(state.headM(), solved.state().network().water()), units),
            "tee at " + units.level(tee.elevationM().getAsDouble()));
      }
    }
    page.tableOfAny(table);
    if (anyTee) {
      page.paragraph(
          "At a tee: the pressure of its water brought to rest; a gauge in a pipe beside it shows a"
              + " little less.");
    }
  }

  private static String shown(OptionalDouble pressure, ShownUnits units) {
    return pressure.isPresent() ? units.pressure(pressure.getAsDouble()) : "cut off";
  }
}
