package rillwright.solver.network.topology;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** The graph of a network: points are its vertices, lines its edges, parallel lines allowed. */
public final class NetworkGraph {
  private final Network network;
  private final Map<PointName, List<Line>> linesAt = new HashMap<>();

  /** The graph of a network. */
  public NetworkGraph(Network network) {
    this.network = network;
    network.points().forEach(point -> linesAt.put(point.name(), new ArrayList<>()));
    for (Line line : network.lines()) {
      linesAt.get(line.from()).add(line);
      linesAt.get(line.to()).add(line);
    }
  }

  /** The network. */
  public Network network() {
    return network;
  }

  /** The lines that begin or end at a point, in the order of the file. */
  public List<Line> linesAt(PointName point) {
    return linesAt.get(point);
  }

  /** The lines that begin at a point, in the order of the file. */
  public List<Line> linesFrom(PointName point) {
    return linesAt(point).stream().filter(line -> line.from().equals(point)).toList();
  }

  /**
   * The points that no line joins, over whatever points, to a place where water has a level or
   * leaves.
   */
  public List<PointName> floatingPoints() {
    Set<PointName> joined = new HashSet<>();
    Deque<PointName> waiting = new ArrayDeque<>();
    for (Point point : network.points()) {
      if (point.heldHeadM().isPresent() || point.spill().isPresent()) {
        joined.add(point.name());
        waiting.add(point.name());
      }
    }
    while (!waiting.isEmpty()) {
      for (Line line : linesAt.get(waiting.remove())) {
        for (PointName end : List.of(line.from(), line.to())) {
          if (joined.add(end)) {
            waiting.add(end);
          }
        }
      }
    }
    return network.points().stream()
        .map(Point::name)
        .filter(point -> !joined.contains(point))
        .toList();
  }
}
