package rillwright.cli.report.text.visit;

import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.units.VisitTools;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Outlet;
import rillwright.solver.steady.PointState;

/** Flow and depths at falls; flow at outlets in air. */
final class FallReadings {
  /** Error of a ruler in running water, m; common practice, no source. */
  static final double RULER_M = 0.002;

  /** How far upstream of a crest its head is read, in heads. */
  private static final double HEADS_BACK = 4;

  private final ShownUnits units;
  private final TableBuilder table;
  private final Set<Hint> hints;

  private FallReadings(Solved solved, TableBuilder table, Set<Hint> hints) {
    this.units = Shown.of(solved);
    this.table = table;
    this.hints = hints;
  }

  static void add(Solved solved, TableBuilder table, Set<Hint> hints) {
    FallReadings readings = new FallReadings(solved, table, hints);
    for (PointState state : solved.state().points()) {
      if (state.outflowM3PerS() > 0 && state.point() instanceof Fall fall) {
        readings.fall(fall, state.outflowM3PerS());
      } else if (state.outflowM3PerS() > 0
          && state.point() instanceof Outlet outlet
          && outlet.levelM().isEmpty()) {
        readings.timed(outlet.name().value(), state.outflowM3PerS());
      }
    }
  }

  private void fall(Fall fall, double flow) {
    timed(fall.name().value(), flow);
    double head = fall.weir().headAt(flow);
    String back = units.distance(HEADS_BACK * head);
    depth("water over the crest, " + back + " upstream of the lip", head, fall.depthBand());
    OptionalDouble brink = fall.weir().brinkDepthAt(flow);
    if (brink.isPresent()) {
      depth("thickness at the brink", brink.getAsDouble(), fall.depthBand());
    }
    hints.add(Hint.CREST);
  }

  private void timed(String name, double flow) {
    VisitTools tools = units.tools();
    TimedFill fill = TimedFill.of(flow, tools);
    if (fill.isTooQuick()) {
      double seconds = tools.poolAreaM2() * tools.poolDepthM() / flow;
      table.row(name, "refill of a pool, " + tools.pool(), units.seconds(seconds), "\u00b18 %");
      hints.add(Hint.REFILL);
      return;
    }
    table.row(
        name,
        "time to fill a " + fill.vessel(),
        units.seconds(fill.seconds()),
        units.secondsBetween(
            fill.seconds() * (1 - fill.share()), fill.seconds() * (1 + fill.share())));
    hints.add(Hint.TIMED);
  }

  private void depth(String what, double depth, double share) {
    double band = Math.hypot(share * depth, RULER_M);
    table.row(
        "",
        what,
        units.tools().ruler().with(depth),
        units.tools().ruler().between(Math.max(0, depth - band), depth + band));
  }
}
