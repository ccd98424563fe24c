package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.POWER;

import java.util.List;
import java.util.Optional;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.study.curve.Curves;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.trace.PumpTrace;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Pump;

/** The curves at a pump for programs. */
public final class ChartJson {
  private record Meeting(PumpSet set, double flowM3PerS) {}

  private static final Shape<CurvePoint> POINT =
      Shape.<CurvePoint>named("curvePoint", "A point of a curve.")
          .number("flowM3PerS", FLOW.from(0), "Flow of the pump.", CurvePoint::flowM3PerS)
          .number("headM", METRES, "Head.", CurvePoint::headM);

  private static final Shape<Meeting> MEETING =
      Shape.<Meeting>of()
          .number("flowM3PerS", FLOW.from(0), "Flow of the pump.", Meeting::flowM3PerS)
          .number("headM", METRES, "Head.", at -> at.set.headAt(at.flowM3PerS))
          .numberOrNull("powerW", POWER, "Power there.", at -> at.set.powerAt(at.flowM3PerS));

  static final Shape<Curves> SHAPE =
      Estimate.<Curves>answer("chart", "The system curve against the pump curve.")
          .words("title", Meaning.TITLE, Curves::title)
          .words("line", "The line that the pump stands in.", it -> it.place().line().value())
          .list(
              "systemCurve",
              POINT,
              "Head that the network asks of the pump, by flow.",
              it -> it.system().points())
          .numberOrNull(
              "greatestFlowM3PerS",
              FLOW,
              "The greatest flow that the pump could draw, where the curve ends there.",
              it -> it.system().greatestFlowM3PerS())
          .list(
              "pumpCurve",
              POINT,
              "Head that the pump gives, by flow.",
              it -> set(it).map(PumpTrace::published).orElse(List.of()))
          .list(
              "pumpCurveBeyond",
              POINT,
              "The same past the last point of its data sheet: a guess.",
              it -> set(it).map(set -> PumpTrace.beyond(set, it.toFlowM3PerS())).orElse(List.of()))
          .orNull(
              "operatingPoint",
              MEETING,
              "Where the two meet; null if the pump is still to be chosen.",
              ChartJson::meeting)
          .list("changed", Value.words(), Meaning.CHANGED, Curves::changes);

  private ChartJson() {}

  /** The JSON text. */
  public static String of(Curves curves) {
    return Json.text(SHAPE, curves);
  }

  private static Optional<PumpSet> set(Curves curves) {
    return curves.pump().map(Pump::set);
  }

  private static Optional<Meeting> meeting(Curves curves) {
    return set(curves).map(set -> new Meeting(set, curves.operatingFlowM3PerS().orElseThrow()));
  }
}
