package rillwright.curves.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.HeadNeeded;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.pumping.StaticHead;
import rillwright.solver.pumping.TargetHead;
import rillwright.solver.pumping.Targets;

/**
 * The true system curve of a network at a pump: at each flow of the pump, the head that everything
 * else needs, balanced with that flow imposed. Not a parabola: falls start one after the other,
 * check valves open, laminar hoses turn turbulent.
 *
 * @param points in rising order of flow
 * @param greatestFlowM3PerS the greatest flow that can be drawn, m³/s, where that is less than was
 *     asked for
 * @param staticHead the head before any water runs; empty if no flow can be drawn
 */
public record SystemCurve(
    List<CurvePoint> points, OptionalDouble greatestFlowM3PerS, Optional<StaticHead> staticHead) {
  private static final int FIRST_STEPS = 24;
  private static final int MOST_HALVINGS = 5;

  /** The curve ends at the first point above this, m: no pump of a pond lifts so high. */
  private static final double MOST_M = 500;

  /** A chord may miss the curve by this share of the tallest head. */
  private static final double CHORD_ERROR = 0.001;

  /** Stands for no share at all: nothing is lost to friction, yet it shows which fall governs. */
  private static final double LEAST_SHARE = 1e-6;

  public SystemCurve {
    points = List.copyOf(points);
  }

  /** One point of a curve at a flow, m³/s; empty if that flow cannot be drawn. */
  private interface Needed {
    Optional<CurvePoint> at(double flowM3PerS);
  }

  /**
   * Traces the curve, with more points where it bends.
   *
   * @param toFlowM3PerS flow to trace to, m³/s, greater than 0
   */
  public static SystemCurve trace(Network network, PumpPlace place, double toFlowM3PerS) {
    double end = HeadNeeded.greatestFlowM3PerS(network, place, toFlowM3PerS);
    Needed needed =
        flow -> HeadNeeded.at(network, place, flow).map(at -> new CurvePoint(flow, at.headM()));
    return new SystemCurve(
        points(needed, end),
        end < toFlowM3PerS ? OptionalDouble.of(end) : OptionalDouble.empty(),
        StaticHead.of(network, place));
  }

  /**
   * Traces the head that is needed where valves hold all falls to one and the same share of their
   * targets: that of the fall that asks for the most, at each share.
   *
   * @param toFlowM3PerS flow to trace to, m³/s, greater than 0
   * @throws IllegalArgumentException if there is no target
   */
  public static SystemCurve traceThrottled(Network network, PumpPlace place, double toFlowM3PerS) {
    Targets targets = Targets.of(network);
    double whole = targets.sumM3PerS();
    Needed needed =
        flow ->
            new TargetHead(network, place, targets.times(Math.max(flow / whole, LEAST_SHARE)))
                .throttled()
                .map(at -> new CurvePoint(at.needed().flowM3PerS(), at.needed().headM()));
    return new SystemCurve(
        points(needed, toFlowM3PerS), OptionalDouble.empty(), StaticHead.of(network, place));
  }

  private static List<CurvePoint> points(Needed needed, double end) {
    List<CurvePoint> coarse = new ArrayList<>();
    boolean withinReach = true;
    for (int i = 0; i <= FIRST_STEPS && withinReach; i++) {
      Optional<CurvePoint> point = needed.at(end * i / FIRST_STEPS);
      point.ifPresent(coarse::add);
      withinReach = point.map(at -> at.headM() <= MOST_M).orElse(true);
    }
    double tallest = coarse.stream().mapToDouble(point -> Math.abs(point.headM())).max().orElse(0);
    List<CurvePoint> fine = new ArrayList<>();
    for (CurvePoint point : coarse) {
      if (!fine.isEmpty()) {
        CurvePoint before = fine.get(fine.size() - 1);
        bisect(needed, before, point, CHORD_ERROR * tallest, MOST_HALVINGS, fine);
      }
      fine.add(point);
    }
    return fine;
  }

  private static void bisect(
      Needed needed,
      CurvePoint from,
      CurvePoint to,
      double chordErrorM,
      int halvingsLeft,
      List<CurvePoint> fine) {
    if (halvingsLeft == 0) {
      return;
    }
    Optional<CurvePoint> middle = needed.at((from.flowM3PerS() + to.flowM3PerS()) / 2);
    if (middle.isEmpty()) {
      return;
    }
    double chord = (from.headM() + to.headM()) / 2;
    if (Math.abs(middle.get().headM() - chord) <= chordErrorM) {
      return;
    }
    bisect(needed, from, middle.get(), chordErrorM, halvingsLeft - 1, fine);
    fine.add(middle.get());
    bisect(needed, middle.get(), to, chordErrorM, halvingsLeft - 1, fine);
  }
}
