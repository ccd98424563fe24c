package rillwright.solver.study.mending;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.steady.SteadyState;

/** The lines through which the water of a fall or outlet comes, from open water on. */
public final class OwnWay {
  private OwnWay() {}

  /**
   * The lines of a fall's way, nearest first.
   *
   * @param state tells which way the water runs; a line without flow counts as it is written
   */
  public static Set<LineName> to(PointName fall, SteadyState state) {
    NetworkGraph graph = new NetworkGraph(state.network());
    Set<LineName> way = new LinkedHashSet<>();
    Deque<PointName> upstream = new ArrayDeque<>();
    upstream.add(fall);
    while (!upstream.isEmpty()) {
      PointName point = upstream.remove();
      if (state.network().point(point).heldHeadM().isPresent() && !point.equals(fall)) {
        continue;
      }
      for (Line line : graph.linesAt(point)) {
        boolean back = state.line(line.name()).flowM3PerS() < 0;
        PointName end = back ? line.from() : line.to();
        if (end.equals(point) && way.add(line.name())) {
          upstream.add(back ? line.to() : line.from());
        }
      }
    }
    return way;
  }
}
