package rillwright.solver.network.topology;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rillwright.solver.network.PointName;

/** Ways from point to point by which water can run. */
final class Ways {
  private final Map<PointName, List<PointName>> onwards = new HashMap<>();
  private final Set<PointName> first = new HashSet<>();

  /** Says that it can come to a point from outside. */
  void begin(PointName point) {
    first.add(point);
  }

  /** Says that it can run from one point to another. */
  void add(PointName from, PointName to) {
    onwards.computeIfAbsent(from, point -> new ArrayList<>()).add(to);
  }

  /** The points to which it can come. */
  Set<PointName> reached() {
    Set<PointName> reached = new HashSet<>(first);
    Deque<PointName> waiting = new ArrayDeque<>(first);
    while (!waiting.isEmpty()) {
      for (PointName next : onwards.getOrDefault(waiting.remove(), List.of())) {
        if (reached.add(next)) {
          waiting.add(next);
        }
      }
    }
    return reached;
  }
}
