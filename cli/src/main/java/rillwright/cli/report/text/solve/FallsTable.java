package rillwright.cli.report.text.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.steady.PointState;

/** Falls and outlets: what runs, against the target, and how thick the sheet is. */
public final class FallsTable {
  private static final String NONE = "";

  private final ShownUnits units;
  private final TableBuilder table;
  private final boolean anyFall;

  private FallsTable(ShownUnits units, boolean anyFall, boolean anyOutlet) {
    this.units = units;
    this.anyFall = anyFall;
    String heading = anyFall && anyOutlet ? "FALLS, OUTLETS" : anyFall ? "FALLS" : "OUTLETS";
    this.table =
        new TableBuilder(heading)
            .column("flow", Side.RIGHT)
            .column("target", Side.RIGHT)
            .column("of target", Side.RIGHT);
    if (anyFall) {
      table
          .column("per width", Side.RIGHT)
          .column("over the crest", Side.RIGHT)
          .column("at the brink", Side.RIGHT);
    }
  }

  /** Prints it, with what its depths mean; nothing where there is neither. */
  public static void print(Solved solved, PageBuilder page) {
    List<PointState> points = solved.state().points();
    boolean anyFall = points.stream().anyMatch(state -> state.point() instanceof Fall);
    boolean anyOutlet = points.stream().anyMatch(state -> state.point() instanceof Outlet);
    FallsTable falls = new FallsTable(Shown.of(solved), anyFall, anyOutlet);
    points.forEach(falls::add);
    if (falls.table.isEmpty()) {
      return;
    }
    if (solved.boils()) {
      page.space();
      page.marked(
          "! ",
          "These flows are not reached: water boils at a pump's inlet, as the warnings say, so it"
              + " gives less, and is worn by it.");
    }
    page.table(falls.table);
    if (solved.state().starves()) {
      page.marked(
          "! ",
          "These flows are not reached for long: a chamber is down at its pump's intake, and a pump"
              + " that draws air surges.");
    }
    if (anyFall) {
      page.paragraph(
          "Over the crest: the depth, read three or four depths upstream of it. At the brink: the"
              + " thickness of the sheet where it leaves the crest. ±: how far its formula may"
              + " be off.");
    }
  }

  private void add(PointState state) {
    Point point = state.point();
    Optional<Fall> fall = point instanceof Fall f ? Optional.of(f) : Optional.empty();
    if (fall.isEmpty() && !(point instanceof Outlet)) {
      return;
    }
    double flow = state.outflowM3PerS();
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of(flow == 0 ? "dry" : units.flow(flow)));
    cells.add(Cell.of(target(point)));
    cells.add(ofTarget(state));
    if (anyFall) {
      cells.addAll(fall.map(f -> sheet(f, flow)).orElse(List.of(none(), none(), none())));
    }
    table.row(point.name().value(), cells);
  }

  private String target(Point point) {
    return point.targetM3PerS().isPresent()
        ? units.writtenFlow(point.targetM3PerS().getAsDouble())
        : "none";
  }

  private Cell ofTarget(PointState state) {
    double target = state.point().targetM3PerS().orElse(0);
    if (target == 0) {
      return none();
    }
    Tone tone = state.isUnderTarget() ? Tone.WARNING : Tone.GOOD;
    return new Cell(units.share(state.outflowM3PerS() / target), tone);
  }

  private List<Cell> sheet(Fall fall, double flow) {
    if (flow <= 0) {
      return List.of(none(), none(), none());
    }
    String band = " \u00b1" + units.share(fall.depthBand());
    OptionalDouble brink = fall.weir().brinkDepthAt(flow);
    return List.of(
        fall.widthM().isPresent()
            ? Cell.of(units.flowPerWidth(flow / fall.widthM().getAsDouble()))
            : none(),
        Cell.of(units.tools().ruler().with(fall.weir().headAt(flow)) + band),
        brink.isPresent()
            ? Cell.of(units.tools().ruler().with(brink.getAsDouble()) + band)
            : none());
  }

  private static Cell none() {
    return Cell.of(NONE);
  }
}
