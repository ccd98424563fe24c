package rillwright.curves.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.content.PowerSeries.PowerPoint;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;

/** The curves of a pump as points to draw. */
public final class PumpTrace {
  private static final int STEPS = 80;

  private PumpTrace() {}

  /** Head against flow over the published range, in rising order of flow. */
  public static List<CurvePoint> published(PumpSet set) {
    return sample(set::headAt, 0, set.publishedRangeM3PerS());
  }

  /**
   * Head against flow past the published range; empty where the range goes further than {@code
   * toFlowM3PerS}.
   */
  public static List<CurvePoint> beyond(PumpSet set, double toFlowM3PerS) {
    double from = set.publishedRangeM3PerS();
    return toFlowM3PerS > from ? sample(set::headAt, from, toFlowM3PerS) : List.of();
  }

  /** The points of the data sheet as the set gives them: scaled by speed and number. */
  public static List<CurvePoint> sheetPoints(PumpSet set) {
    double share = set.publishedRangeM3PerS() / set.curve().lastFlowM3PerS();
    List<CurvePoint> points = new ArrayList<>();
    for (PumpPoint point : set.curve().points()) {
      double flow = share * point.flowM3PerS();
      points.add(new CurvePoint(flow, set.headAt(flow)));
    }
    return points;
  }

  /** Electrical power against flow over the published range; empty if the sheet gives none. */
  public static List<PowerPoint> power(PumpSet set) {
    return set.powerAt(0).isPresent()
        ? sample(flow -> set.powerAt(flow).orElseThrow(), 0, set.publishedRangeM3PerS()).stream()
            .map(point -> new PowerPoint(point.flowM3PerS(), point.headM()))
            .toList()
        : List.of();
  }

  private static List<CurvePoint> sample(DoubleUnaryOperator curve, double from, double to) {
    List<CurvePoint> points = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double flow = from + (to - from) * i / STEPS;
      points.add(new CurvePoint(flow, curve.applyAsDouble(flow)));
    }
    return points;
  }
}
