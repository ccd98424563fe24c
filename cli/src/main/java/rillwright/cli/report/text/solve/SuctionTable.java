package rillwright.cli.report.text.solve;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import rillwright.cli.report.check.SheetNotes;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.LineName;
import rillwright.solver.pumping.PumpSuction;

/**
 * The suction side of pumps that run: water over the inlet of those that stand in it, NPSH where
 * the data sheet asks for it or the pump does not stand in the water, each with what is needed.
 */
final class SuctionTable {
  private record Row(String line, PumpSuction pump) {
    boolean isUnderWater() {
      return pump.depthM().isPresent();
    }

    boolean isNpshOfInterest() {
      return pump.npshRequiredM().isPresent() || !isUnderWater();
    }
  }

  private SuctionTable() {}

  /** Prints it; where no level of an inlet is known, that it is not checked. */
  static void print(Solved solved, PageBuilder page) {
    List<PumpSuction> running = PumpSuction.listRunning(solved.state());
    List<Row> rows = rows(running);
    boolean depth = rows.stream().anyMatch(Row::isUnderWater);
    boolean npsh = rows.stream().anyMatch(Row::isNpshOfInterest);
    TableBuilder table = new TableBuilder("SUCTION");
    if (depth) {
      table.column("water over inlet", Side.RIGHT).column("needed", Side.RIGHT);
    }
    if (npsh) {
      table.column("NPSH available", Side.RIGHT).column("required", Side.RIGHT);
    }
    ShownUnits units = Shown.of(solved);
    for (Row row : rows) {
      PumpSuction pump = row.pump;
      OptionalDouble needed = row.isUnderWater() ? pump.depthNeededM() : OptionalDouble.empty();
      Stream<Cell> ofDepth =
          Stream.of(cell(pump.depthM(), units::depth), cell(needed, units::depth));
      Stream<Cell> ofNpsh =
          Stream.of(
              cell(pump.npshAvailableM(), units::head), cell(pump.npshRequiredM(), units::head));
      table.row(
          row.line,
          Stream.concat(depth ? ofDepth : Stream.of(), npsh ? ofNpsh : Stream.of()).toList());
    }
    page.tableOfAny(table);
    List<LineName> unchecked =
        running.stream()
            .filter(pump -> !pump.isInletKnown())
            .map(PumpSuction::line)
            .distinct()
            .toList();
    if (rows.isEmpty() && !unchecked.isEmpty()) {
      page.heading("SUCTION");
    }
    unchecked.forEach(
        line -> page.paragraph(SheetNotes.unchecked(solved.state().network(), line) + "."));
    if (depth) {
      page.paragraph(
          "Needed so that no air is drawn: by the data sheet, else by the inlet's bore and flow.");
    }
    if (npsh) {
      page.paragraph(
          "NPSH: head above vapor pressure at the inlet; required by the data sheet at this flow.");
    }
  }

  private static List<Row> rows(List<PumpSuction> running) {
    return running.stream()
        .filter(pump -> pump.npshAvailableM().isPresent())
        .map(pump -> new Row(pump.line().value(), pump))
        .toList();
  }

  private static Cell cell(OptionalDouble value, DoubleFunction<String> words) {
    return Cell.of(value.isPresent() ? words.apply(value.getAsDouble()) : "not given");
  }
}
