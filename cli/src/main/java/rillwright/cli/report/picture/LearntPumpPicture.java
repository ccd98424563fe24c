package rillwright.cli.report.picture;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.asbuilt.AsbuiltAnswer;
import rillwright.cli.study.asbuilt.LearntPump;
import rillwright.curves.chart.content.BandChart;
import rillwright.curves.chart.content.BandChart.BandCurve;
import rillwright.curves.chart.content.BandChart.Spot;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.solver.study.diagnosis.reading.When;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/** The picture of pumps without a data sheet: their curves with bands over what was read. */
public final class LearntPumpPicture {
  private final ShownUnits units;

  private LearntPumpPicture(ShownUnits units) {
    this.units = units;
  }

  /** What is to be drawn; empty if every pump has a sheet. */
  public static Optional<BandChart> of(AsbuiltAnswer answer) {
    if (answer.pumps().isEmpty()) {
      return Optional.empty();
    }
    ShownUnits units = Shown.of(answer);
    LearntPumpPicture picture = new LearntPumpPicture(units);
    return Optional.of(
        new BandChart(
            answer.title(),
            "The pump's curve as the readings leave it: at each flow nine of ten likely curves are"
                + " in the band",
            units.flowUnit(),
            units.headUnit(),
            answer.pumps().stream().map(picture::curve).toList()));
  }

  private BandCurve curve(LearntPump pump) {
    return new BandCurve(
        pump.name() + ", median",
        points(pump, Band::p5),
        upToItsEnd(points(pump, Band::p50)),
        points(pump, Band::p95),
        pump.spots().stream().map(this::spot).toList());
  }

  /** The points as far as it gives any head. */
  private static List<CurvePoint> upToItsEnd(List<CurvePoint> points) {
    int end = 1;
    while (end < points.size() - 1 && points.get(end).headM() > 0) {
      end++;
    }
    return points.subList(0, end + 1);
  }

  private static List<CurvePoint> points(LearntPump pump, ToDoubleFunction<Band> of) {
    return pump.finely().stream()
        .map(point -> new CurvePoint(point.flowM3PerS(), of.applyAsDouble(point.headM())))
        .toList();
  }

  private Spot spot(LearntPump.Spot spot) {
    return new Spot(
        new CurvePoint(spot.flowM3PerS(), Math.max(0, spot.headM())),
        spot.flowWithinM3PerS(),
        spot.headWithinM(),
        spot.isFlowRead(),
        List.of(state(spot.when()), figures(spot)));
  }

  private String figures(LearntPump.Spot spot) {
    return units.flow(spot.flowM3PerS()) + " at " + units.head(spot.headM());
  }

  private String state(When when) {
    return when instanceof When.ValveAt at ? "valve at " + units.share(at.open()) : when.name();
  }
}
