package rillwright.cli.report.text.solve;

import java.util.OptionalDouble;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.PartWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;

/** Pumps: where they run on their curve and what they draw. */
public final class PumpsTable {
  private PumpsTable() {}

  /** Prints it; nothing where there is no pump. */
  public static void print(Solved solved, PageBuilder page) {
    TableBuilder table =
        new TableBuilder("PUMPS")
            .column("flow", Side.RIGHT)
            .column("head", Side.RIGHT)
            .column("draws", Side.RIGHT)
            .column("shut-off", Side.RIGHT)
            .column("of its range", Side.RIGHT)
            .column("pump", Side.LEFT);
    for (LineState line : solved.state().lines()) {
      for (PartState part : line.parts()) {
        if (part.part() instanceof Pump pump) {
          add(table, solved, line, part, pump);
        }
      }
    }
    page.tableOfAny(table);
  }

  private static void add(
      TableBuilder table, Solved solved, LineState line, PartState part, Pump pump) {
    ShownUnits units = Shown.of(solved);
    String name = line.line().name().value();
    boolean runsDry =
        solved.findings().stream()
            .anyMatch(it -> it.code().equals("pump-runs-dry") && it.at().equals(name));
    PumpSet set = pump.set();
    double flow = part.flowM3PerS();
    OptionalDouble power = set.powerAt(flow);
    double range = set.publishedRangeM3PerS();
    table.row(
        name,
        units.flow(flow),
        runsDry ? "dry" : units.head(set.headAt(flow)),
        power.isPresent() ? units.power(power.getAsDouble()) : "not given",
        units.writtenHead(set.publishedShutOffHeadM()),
        range > 0 ? units.share(flow / range) + " of " + units.writtenFlow(range) : "stopped",
        PartWords.of(pump, units)
            + (runsDry
                ? ", runs dry"
                : solved.state().point(line.line().from()).isStarved() ? ", draws air" : ""));
  }
}
