package rillwright.cli.report.text.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.cli.report.check.SheetRemarks;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.sheet.PumpSheets;
import rillwright.cli.study.sheet.SheetFigures;
import rillwright.cli.study.sheet.SheetFigures.CurveFigures;
import rillwright.solver.law.pump.PumpCurve;

/** Data sheets for people. */
public final class PumpText {
  private final ShownUnits units;
  private final PageBuilder page;

  private PumpText(ShownUnits units, PageBuilder page) {
    this.units = units;
    this.page = page;
  }

  /** The page. */
  public static Page of(PumpSheets answer) {
    ShownUnits units = Shown.of(answer.show());
    boolean several = answer.sheets().size() > 1;
    PageBuilder page =
        new PageBuilder(several ? "Pump data sheets" : answer.sheets().get(0).model());
    PumpText text = new PumpText(units, page);
    for (SheetFigures figures : answer.sheets()) {
      text.print(figures, several ? figures.model() + ": " : "");
    }
    page.space();
    SiteCautions.printWiring(page);
    return page.build();
  }

  private void print(SheetFigures figures, String opening) {
    page.table(published(figures, opening + "ON THE DATA SHEET"));
    page.table(fitted(figures, opening + "CURVE THROUGH THE POINTS"));
    curve(figures);
    List<String> facts = new SheetFactWords(units).of(figures.sheet().facts());
    if (!facts.isEmpty()) {
      page.heading(opening + "THE SHEET SAYS");
      facts.forEach(page::paragraph);
    }
    page.heading(opening + "WHAT A METER SHOULD READ");
    new MeterWords(units, page).print(figures);
    List<String> remarks = SheetRemarks.of(figures, units);
    if (!remarks.isEmpty()) {
      page.heading(opening + "WARNINGS AND NOTES");
      remarks.forEach(remark -> page.marked("! ", remark));
    }
  }

  private TableBuilder published(SheetFigures figures, String heading) {
    List<String> npsh =
        figures.curve().points().stream()
            .map(point -> orNothing(point.npshRequiredM(), units::writtenHead))
            .toList();
    return table(
        heading, figures.published().toList(), npsh, units::writtenFlow, units::writtenHead);
  }

  private TableBuilder fitted(SheetFigures figures, String heading) {
    PumpCurve curve = figures.curve();
    List<CurveFigures> rows =
        EvenFlows.upTo(curve.lastFlowM3PerS(), units.flowUnit()).stream().map(figures::at).toList();
    List<String> npsh =
        rows.stream()
            .map(row -> orNothing(curve.npshRequiredAt(row.flowM3PerS()), units::head))
            .toList();
    return table(heading, rows, npsh, units::flow, units::head);
  }

  private TableBuilder table(
      String heading,
      List<CurveFigures> rows,
      List<String> npsh,
      Function<Double, String> flow,
      Function<Double, String> head) {
    boolean power = rows.stream().anyMatch(row -> row.powerW().isPresent());
    boolean suction = npsh.stream().anyMatch(it -> !it.equals(NONE));
    TableBuilder table = new TableBuilder(heading);
    table.column("flow", Side.RIGHT).column("head", Side.RIGHT);
    if (power) {
      table.column("power", Side.RIGHT).column("wire-to-water", Side.RIGHT);
    }
    if (suction) {
      table.column("NPSH required", Side.RIGHT);
    }
    for (int i = 0; i < rows.size(); i++) {
      CurveFigures row = rows.get(i);
      List<String> cells = new ArrayList<>();
      cells.add(flow.apply(row.flowM3PerS()));
      cells.add(head.apply(row.headM()));
      if (power) {
        cells.add(orNothing(row.powerW(), units::power));
        cells.add(orNothing(row.wireToWater(), units::share));
      }
      if (suction) {
        cells.add(npsh.get(i));
      }
      table.row("", cells.toArray(String[]::new));
    }
    return table;
  }

  private static final String NONE = "not given";

  private static String orNothing(OptionalDouble value, Function<Double, String> words) {
    return value.isPresent() ? words.apply(value.getAsDouble()) : NONE;
  }

  private void curve(SheetFigures figures) {
    PumpCurve curve = figures.curve();
    page.paragraph(
        "Shut-off head "
            + units.head(curve.publishedShutOffHeadM())
            + "; the sheet ends at "
            + units.writtenFlow(curve.lastFlowM3PerS())
            + ".");
    figures.best().ifPresent(best -> best(best, curve.lastFlowM3PerS()));
  }

  private void best(CurveFigures best, double last) {
    double flow = best.flowM3PerS();
    page.paragraph(
        "Best wire-to-water efficiency "
            + units.share(best.wireToWater().getAsDouble())
            + " at "
            + units.flow(flow)
            + ", "
            + units.head(best.headM())
            + ". 70 to 120 % of that flow is recommended (common practice): "
            + units.flow(0.7 * flow)
            + " to "
            + units.flow(Math.min(last, 1.2 * flow))
            + (1.2 * flow > last ? ", where the sheet ends." : "."));
  }
}
