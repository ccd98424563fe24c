package rillwright.cli.report.text.visit;

import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;

/** The power that pumps draw. */
final class PumpReadings {
  /** Error of a plug-in watt meter; common practice, no source. */
  private static final double METER_SHARE = 0.03;

  private PumpReadings() {}

  static void add(Solved solved, TableBuilder table, Set<Hint> hints) {
    ShownUnits units = Shown.of(solved);
    for (LineState line : solved.state().lines()) {
      for (PartState part : line.parts()) {
        if (part.part() instanceof Pump pump) {
          OptionalDouble power = pump.set().powerAt(part.flowM3PerS());
          if (power.orElse(0) > 0) {
            double watts = power.getAsDouble();
            table.row(
                line.line().name().value(),
                "power of " + pump.label() + ", watt meter",
                units.power(watts),
                units.powers(watts * (1 - METER_SHARE), watts * (1 + METER_SHARE)));
            hints.add(Hint.WATTS);
          }
        }
      }
    }
  }
}
