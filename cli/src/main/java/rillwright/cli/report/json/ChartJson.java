package rillwright.cli.report.json;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.study.curve.Curves;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.trace.PumpTrace;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Pump;

/** The curves at a pump for programs. */
public final class ChartJson {
  private ChartJson() {}

  /** The JSON text. */
  public static String of(Curves curves) {
    return Json.object(
        json -> {
          write(json, curves);
          ChangedField.write(json, curves.changes());
        });
  }

  private static void write(Json json, Curves curves) {
    Optional<PumpSet> set = curves.pump().map(Pump::set);
    json.words("title", curves.title());
    json.words("line", curves.place().line().value());
    points(json, "systemCurve", curves.system().points());
    json.number("greatestFlowM3PerS", curves.system().greatestFlowM3PerS());
    points(json, "pumpCurve", set.map(PumpTrace::published).orElse(List.of()));
    points(
        json,
        "pumpCurveBeyond",
        set.map(s -> PumpTrace.beyond(s, curves.toFlowM3PerS())).orElse(List.of()));
    json.objectOrNull(
        "operatingPoint", set, pump -> operatingPoint(json, pump, curves.operatingFlowM3PerS()));
  }

  private static void operatingPoint(Json json, PumpSet set, OptionalDouble operatingFlow) {
    double flow = operatingFlow.orElseThrow();
    json.number("flowM3PerS", flow);
    json.number("headM", set.headAt(flow));
    json.number("powerW", set.powerAt(flow));
  }

  private static void points(Json json, String name, List<CurvePoint> points) {
    json.array(
        name,
        () ->
            points.forEach(
                point ->
                    json.object(
                        () -> {
                          json.number("flowM3PerS", point.flowM3PerS());
                          json.number("headM", point.headM());
                        })));
  }
}
