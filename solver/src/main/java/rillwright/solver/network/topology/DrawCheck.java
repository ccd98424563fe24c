package rillwright.solver.network.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.alg.flow.EdmondsKarpMFImpl;
import org.jgrapht.alg.interfaces.MaximumFlowAlgorithm.MaximumFlow;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/**
 * Whether the lines can carry what is drawn and put in, in the directions and amounts that their
 * laws allow: a maximum-flow question, answered before any head is asked.
 */
public final class DrawCheck {
  private static final double ROUNDING = 1e-8;

  /** Stands for "as much as you like" beside all draws together. */
  private static final double PLENTY = 1e4;

  private final SimpleDirectedWeightedGraph<String, DefaultWeightedEdge> graph =
      new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
  private final Network network;
  private final Map<PointName, Double> draws;

  /**
   * All draws and inflows together, m³/s. Capacities are shares of it, for the search for the
   * greatest flow takes anything below 1e-9 for none.
   */
  private final double all;

  private DrawCheck(Network network, Map<PointName, Double> draws) {
    this.network = network;
    this.draws = draws;
    this.all = draws.values().stream().mapToDouble(Math::abs).sum();
  }

  /**
   * The draws that cannot be met, in the order of the network's points.
   *
   * @param laws the law of every line that is there to carry water
   * @param starved chambers that swallow all that their lines bring; what is drawn from them is at
   *     most what a negative draw puts in
   * @param draws flow taken out at points, m³/s; negative puts in
   */
  public static List<UnmetDraw> unmet(
      Network network,
      Map<Line, HeadLaw> laws,
      Set<PointName> starved,
      Map<PointName, Double> draws) {
    boolean none = draws.values().stream().allMatch(draw -> draw == 0);
    return none ? List.of() : new DrawCheck(network, draws).run(laws, starved);
  }

  private List<UnmetDraw> run(Map<Line, HeadLaw> laws, Set<PointName> starved) {
    String source = "source";
    String sink = "sink";
    String world = "world";
    List.of(source, sink, world).forEach(graph::addVertex);
    double drawn = draws.values().stream().mapToDouble(draw -> Math.max(0, draw)).sum();
    double putIn = draws.values().stream().mapToDouble(draw -> Math.max(0, -draw)).sum();
    addCapacity(source, world, drawn);
    addCapacity(world, sink, putIn);
    for (Point point : network.points()) {
      String vertex = vertex(point.name());
      graph.addVertex(vertex);
      double draw = draws.getOrDefault(point.name(), 0.0);
      addCapacity(vertex, sink, Math.max(0, draw));
      addCapacity(source, vertex, Math.max(0, -draw));
      boolean held = point.heldHeadM().isPresent();
      boolean drawFixed = draws.containsKey(point.name());
      boolean gives = held || point.spill().map(s -> s.law().leastFlow() < 0).orElse(false);
      boolean takes = held || point.spill().isPresent();
      addCapacity(world, vertex, gives && !drawFixed ? PLENTY * all : 0);
      boolean swallows = starved.contains(point.name());
      addCapacity(vertex, world, (takes && !drawFixed) || swallows ? PLENTY * all : 0);
    }
    laws.forEach(
        (line, law) -> {
          String from = vertex(line.from());
          String to = vertex(line.to());
          String intoTo = starved.contains(line.to()) ? world : to;
          String intoFrom = starved.contains(line.from()) ? world : from;
          addCapacity(from, intoTo, Math.min(PLENTY * all, Math.max(0, law.greatestFlow())));
          addCapacity(to, intoFrom, Math.min(PLENTY * all, Math.max(0, -law.leastFlow())));
        });
    MaximumFlow<DefaultWeightedEdge> flow =
        new EdmondsKarpMFImpl<>(graph).getMaximumFlow(source, sink);
    List<UnmetDraw> unmet = new ArrayList<>();
    for (Point point : network.points()) {
      double draw = draws.getOrDefault(point.name(), 0.0);
      String vertex = vertex(point.name());
      double met =
          draw > 0 ? flowOn(flow, vertex, sink) : draw < 0 ? -flowOn(flow, source, vertex) : 0;
      if (Math.abs(draw - met) > ROUNDING * all) {
        unmet.add(new UnmetDraw(point.name(), draw, met));
      }
    }
    return unmet;
  }

  private static String vertex(PointName name) {
    return "point " + name.value();
  }

  private void addCapacity(String from, String to, double capacity) {
    if (capacity <= 0 || from.equals(to)) {
      return;
    }
    DefaultWeightedEdge edge = graph.getEdge(from, to);
    if (edge == null) {
      graph.setEdgeWeight(graph.addEdge(from, to), capacity / all);
    } else {
      graph.setEdgeWeight(edge, graph.getEdgeWeight(edge) + capacity / all);
    }
  }

  private double flowOn(MaximumFlow<DefaultWeightedEdge> flow, String from, String to) {
    DefaultWeightedEdge edge = graph.getEdge(from, to);
    return edge == null ? 0 : all * flow.getFlow(edge);
  }
}
