package rillwright.solver.finding;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.steady.SteadyState;

/** Pumps through which water would run back for lack of a check valve. */
final class RunBackDetector implements Detector {

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (Line line : state.network().lines()) {
      boolean pump = line.has(Pump.class) || line.has(PlannedPump.class);
      if (pump && !hasCheckValve(line)) {
        OptionalDouble from = state.point(line.from()).headM();
        double highest = highestWaterBehind(state.network(), line);
        if (from.isPresent() && highest > from.getAsDouble()) {
          findings.add(runsBack(line.name().value(), highest - from.getAsDouble()));
        }
      }
    }
    return findings;
  }

  private static boolean hasCheckValve(Line line) {
    return line.has(CheckValve.class);
  }

  /** The highest water or crest that no check valve keeps from the end of a pump's line. */
  private static double highestWaterBehind(Network network, Line pumpLine) {
    NetworkGraph graph = new NetworkGraph(network);
    double highest = Double.NEGATIVE_INFINITY;
    Set<PointName> seen = new HashSet<>(List.of(pumpLine.from()));
    Deque<PointName> next = new ArrayDeque<>(List.of(pumpLine.to()));
    while (!next.isEmpty()) {
      PointName name = next.poll();
      if (!seen.add(name)) {
        continue;
      }
      Point point = network.point(name);
      highest = Math.max(highest, restingLevel(point));
      if (point.heldHeadM().isPresent()) {
        continue;
      }
      for (Line line : graph.linesAt(name)) {
        if (!line.equals(pumpLine) && !hasCheckValve(line)) {
          next.add(line.from().equals(name) ? line.to() : line.from());
        }
      }
    }
    return highest;
  }

  private static double restingLevel(Point point) {
    return point instanceof Fall fall
        ? fall.crestM()
        : point
            .heldHeadM()
            .orElse(point.spill().map(spill -> spill.levelM()).orElse(Double.NEGATIVE_INFINITY));
  }

  /** Water that would run back through a pump. */
  private static Finding runsBack(String at, double fromAboveM) {
    return Finding.of(
            Severity.ADVICE,
            "runs-back",
            at,
            "No check valve downstream of the pump in \""
                + at
                + "\": when it stops, the pipe drains back through it from up to ")
        .length("fromAbove", fromAboveM)
        .then(
            " above, the pump may spin backwards, and each start fills the pipe anew. Where that"
                + " harms, fit a swing check valve that can be reached, its arrow up the hill.");
  }
}
