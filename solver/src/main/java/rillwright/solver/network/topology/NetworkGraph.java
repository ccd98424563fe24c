package rillwright.solver.network.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DirectedPseudograph;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** The graph of a network: points are its vertices, lines its edges, parallel lines allowed. */
public final class NetworkGraph {
  private final Network network;
  private final Graph<PointName, LineName> graph;

  /** The graph of a network. */
  public NetworkGraph(Network network) {
    this.network = network;
    this.graph = new DirectedPseudograph<>(LineName.class);
    network.points().forEach(point -> graph.addVertex(point.name()));
    network.lines().forEach(line -> graph.addEdge(line.from(), line.to(), line.name()));
  }

  /** The lines that begin or end at a point, in the order of the file. */
  public List<Line> linesAt(PointName point) {
    Set<LineName> touching = graph.edgesOf(point);
    return network.lines().stream().filter(line -> touching.contains(line.name())).toList();
  }

  /**
   * The points that no line joins, over whatever points, to a place where water has a level or
   * leaves.
   */
  public List<PointName> floatingPoints() {
    List<PointName> floating = new ArrayList<>();
    for (Set<PointName> joined : new ConnectivityInspector<>(graph).connectedSets()) {
      if (joined.stream().map(network::point).noneMatch(NetworkGraph::hasReference)) {
        floating.addAll(joined);
      }
    }
    return network.points().stream().map(Point::name).filter(floating::contains).toList();
  }

  private static boolean hasReference(Point point) {
    return point.heldHeadM().isPresent() || point.spill().isPresent();
  }
}
