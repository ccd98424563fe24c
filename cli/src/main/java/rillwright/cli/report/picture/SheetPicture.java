package rillwright.cli.report.picture;

import java.util.List;
import java.util.Optional;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.sheet.PumpSheets;
import rillwright.cli.study.sheet.SheetFigures;
import rillwright.cli.study.sheet.SheetFigures.CurveFigures;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint;
import rillwright.curves.chart.content.PowerSeries;
import rillwright.curves.chart.content.PumpCurveSeries;
import rillwright.curves.trace.PumpTrace;

/** The picture of data sheets: their curves, of a single one its power and best point too. */
public final class SheetPicture {
  private SheetPicture() {}

  /** What is to be drawn. */
  public static OperatingChart of(PumpSheets answer) {
    ShownUnits units = Shown.of(answer.show());
    List<SheetFigures> sheets = answer.sheets();
    Optional<SheetFigures> only =
        sheets.size() == 1 ? Optional.of(sheets.get(0)) : Optional.empty();
    return new OperatingChart(
        only.map(SheetFigures::model).orElse("Pump data sheets"),
        "Published points and the curve through them",
        units.flowUnit(),
        units.headUnit(),
        List.of(),
        sheets.stream().map(SheetPicture::series).toList(),
        only.flatMap(SheetFigures::best).map(best -> mark(best, units)).stream().toList(),
        Optional.empty(),
        Optional.empty(),
        only.map(sheet -> PumpTrace.power(sheet.set()))
            .filter(points -> points.size() > 1)
            .map(points -> new PowerSeries("power drawn", points)));
  }

  private static PumpCurveSeries series(SheetFigures figures) {
    return new PumpCurveSeries(
        figures.model(),
        PumpTrace.published(figures.set()),
        List.of(),
        PumpTrace.sheetPoints(figures.set()));
  }

  private static OperatingPoint mark(CurveFigures best, ShownUnits units) {
    return new OperatingPoint(
        best.flowM3PerS(),
        best.headM(),
        List.of(
            "best efficiency " + units.share(best.wireToWater().getAsDouble()),
            units.flow(best.flowM3PerS()) + " at " + units.head(best.headM())));
  }
}
