package rillwright.curves.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.HeadNeeded;
import rillwright.solver.pumping.PumpPlace;

/**
 * The true system curve of a network at a pump: at each flow of the pump, the head that everything
 * else needs, balanced with that flow imposed. Not a parabola: falls start one after the other,
 * check valves open, laminar hoses turn turbulent.
 *
 * @param points in rising order of flow
 * @param greatestFlowM3PerS the greatest flow that can be drawn, m³/s, where that is less than was
 *     asked for
 */
public record SystemCurve(List<CurvePoint> points, OptionalDouble greatestFlowM3PerS) {
  private static final int FIRST_STEPS = 24;
  private static final int MOST_HALVINGS = 5;

  /** A chord may miss the curve by this share of the tallest head. */
  private static final double CHORD_ERROR = 0.001;

  public SystemCurve {
    points = List.copyOf(points);
  }

  /**
   * Traces the curve, with more points where it bends.
   *
   * @param toFlowM3PerS flow to trace to, m³/s, greater than 0
   */
  public static SystemCurve trace(Network network, PumpPlace place, double toFlowM3PerS) {
    double end = HeadNeeded.greatestFlowM3PerS(network, place, toFlowM3PerS);
    List<CurvePoint> coarse = new ArrayList<>();
    for (int i = 0; i <= FIRST_STEPS; i++) {
      at(network, place, end * i / FIRST_STEPS).ifPresent(coarse::add);
    }
    double tallest = coarse.stream().mapToDouble(point -> Math.abs(point.headM())).max().orElse(0);
    List<CurvePoint> fine = new ArrayList<>();
    for (CurvePoint point : coarse) {
      if (!fine.isEmpty()) {
        CurvePoint before = fine.get(fine.size() - 1);
        bisect(network, place, before, point, CHORD_ERROR * tallest, MOST_HALVINGS, fine);
      }
      fine.add(point);
    }
    return new SystemCurve(
        fine, end < toFlowM3PerS ? OptionalDouble.of(end) : OptionalDouble.empty());
  }

  private static void bisect(
      Network network,
      PumpPlace place,
      CurvePoint from,
      CurvePoint to,
      double chordErrorM,
      int halvingsLeft,
      List<CurvePoint> fine) {
    if (halvingsLeft == 0) {
      return;
    }
    Optional<CurvePoint> middle = at(network, place, (from.flowM3PerS() + to.flowM3PerS()) / 2);
    if (middle.isEmpty()) {
      return;
    }
    double chord = (from.headM() + to.headM()) / 2;
    if (Math.abs(middle.get().headM() - chord) <= chordErrorM) {
      return;
    }
    bisect(network, place, from, middle.get(), chordErrorM, halvingsLeft - 1, fine);
    fine.add(middle.get());
    bisect(network, place, middle.get(), to, chordErrorM, halvingsLeft - 1, fine);
  }

  private static Optional<CurvePoint> at(Network network, PumpPlace place, double flowM3PerS) {
    return HeadNeeded.at(network, place, flowM3PerS)
        .map(needed -> new CurvePoint(flowM3PerS, needed.headM()));
  }
}
