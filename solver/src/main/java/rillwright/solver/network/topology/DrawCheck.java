package rillwright.solver.network.topology;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
 * laws allow: a maximum-flow question, answered before any head is asked. It is asked once for what
 * is drawn, from where it can come, and once for what is put in, to where it can go: if each can be
 * met for itself, both can be together.
 *
 * <p>Source: the symmetric supply and demand theorem, Ford, L. R. and Fulkerson, D. R. (1962),
 * Flows in Networks, Princeton, section II.2 (section from memory).
 */
public final class DrawCheck {
  /** Share of all draws that does not count: less than the balance lets pass. */
  private static final double ROUNDING = 1e-10;

  /** What the search for the greatest flow takes for none, share of all draws. */
  private static final double NOTHING = 1e-13;

  private static final double NEGLIGIBLE_M3_PER_S = 1e-13;

  /** Stands for "as much as you like" beside the largest draw. */
  private static final double PLENTY = 1e4;

  private static final String SOURCE = "source";
  private static final String SINK = "sink";
  private static final String WORLD = "world";

  /** What is asked for. */
  private enum Side {
    /** Draws, met along the flow of the water. */
    DRAWN,
    /** What is put in, met against it. */
    PUT_IN;

    /** What it wants of a draw, m³/s; negative if that helps instead. */
    double wanted(double draw) {
      return this == DRAWN ? draw : -draw;
    }
  }

  private final SimpleDirectedWeightedGraph<String, DefaultWeightedEdge> flows =
      new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
  private final NetworkGraph graph;
  private final Network network;
  private final Function<Line, HeadLaw> laws;
  private final Map<PointName, Double> starved;
  private final Map<PointName, Double> draws;
  private final Set<PointName> closed;
  private final Side side;

  /** All draws and inflows together, m³/s. Capacities are shares of it. */
  private final double all;

  private DrawCheck(
      NetworkGraph graph,
      Function<Line, HeadLaw> laws,
      Map<PointName, Double> starved,
      Map<PointName, Double> draws,
      Set<PointName> closed,
      Side side) {
    this.graph = graph;
    this.network = graph.network();
    this.laws = laws;
    this.starved = starved;
    this.draws = draws;
    this.closed = closed;
    this.side = side;
    this.all = draws.values().stream().mapToDouble(Math::abs).sum();
  }

  /**
   * The draws that cannot be met, in the order of the network's points.
   *
   * @param laws of its lines
   * @param starved chambers that swallow all that their lines bring, and the flow that can be drawn
   *     from each, m³/s
   * @param draws flow taken out at points, m³/s; negative puts in
   * @param closed points whose own way out of the network is not there
   */
  public static List<UnmetDraw> unmet(
      NetworkGraph graph,
      Function<Line, HeadLaw> laws,
      Map<PointName, Double> starved,
      Map<PointName, Double> draws,
      Set<PointName> closed) {
    boolean none = draws.values().stream().allMatch(draw -> draw == 0);
    if (none) {
      return List.of();
    }
    List<UnmetDraw> unmet = new ArrayList<>();
    for (Side side : Side.values()) {
      unmet.addAll(new DrawCheck(graph, laws, starved, draws, closed, side).run());
    }
    return unmet;
  }

  private List<UnmetDraw> run() {
    double asked = draws.values().stream().mapToDouble(d -> Math.max(0, side.wanted(d))).sum();
    if (asked == 0) {
      return List.of();
    }
    List<Point> wanting = network.points().stream().filter(point -> wanted(point) > 0).toList();
    Set<PointName> wide = reached(asked);
    if (wanting.stream().allMatch(point -> wide.contains(point.name()))) {
      return List.of();
    }
    Set<PointName> any = reached(0);
    return wanting.stream().allMatch(it -> wide.contains(it.name()) || !any.contains(it.name()))
        ? unmet(wanting, point -> any.contains(point.name()) ? wanted(point) : 0)
        : byGreatestFlow(wanting);
  }

  private List<UnmetDraw> unmet(List<Point> wanting, ToDoubleFunction<Point> metM3PerS) {
    double negligible = Math.max(ROUNDING * all, NEGLIGIBLE_M3_PER_S);
    List<UnmetDraw> unmet = new ArrayList<>();
    for (Point point : wanting) {
      double met = metM3PerS.applyAsDouble(point);
      if (wanted(point) - met > negligible) {
        int sign = side == Side.DRAWN ? 1 : -1;
        unmet.add(new UnmetDraw(point.name(), sign * wanted(point), 0.0 + sign * met));
      }
    }
    return unmet;
  }

  private List<UnmetDraw> byGreatestFlow(List<Point> wanting) {
    List.of(SOURCE, SINK, WORLD).forEach(flows::addVertex);
    flows.setEdgeWeight(flows.addEdge(SOURCE, WORLD), PLENTY);
    network.points().forEach(point -> flows.addVertex(vertex(point.name())));
    network.points().forEach(this::addPoint);
    for (Line line : network.lines()) {
      HeadLaw law = laws.apply(line);
      String from = vertex(line.from());
      String to = vertex(line.to());
      String intoTo = starved.containsKey(line.to()) ? WORLD : to;
      String intoFrom = starved.containsKey(line.from()) ? WORLD : from;
      addPath(from, intoTo, Math.max(0, law.greatestFlow()));
      addPath(to, intoFrom, Math.max(0, -law.leastFlow()));
    }
    MaximumFlow<DefaultWeightedEdge> flow =
        new EdmondsKarpMFImpl<>(flows, NOTHING).getMaximumFlow(SOURCE, SINK);
    return unmet(wanting, point -> all * flow.getFlow(flows.getEdge(vertex(point.name()), SINK)));
  }

  /**
   * The points that ways lead to. If every want is met by ways that can each carry all of them, all
   * are met at once: mostly so, and soon seen. To what no way leads at all nothing comes.
   *
   * @param leastM3PerS what a way must be able to carry; 0 for anything at all
   */
  private Set<PointName> reached(double leastM3PerS) {
    Set<PointName> reached = new HashSet<>();
    Deque<PointName> waiting = new ArrayDeque<>();
    for (Point point : network.points()) {
      double fromOutside = fromOutsideM3PerS(point);
      if (fromOutside > 0 && fromOutside >= leastM3PerS && reached.add(point.name())) {
        waiting.add(point.name());
      }
    }
    while (!waiting.isEmpty()) {
      PointName point = waiting.remove();
      for (Line line : graph.linesAt(point)) {
        boolean begins = line.from().equals(point);
        PointName next = begins ? line.to() : line.from();
        boolean swallowed = side == Side.DRAWN && starved.containsKey(next);
        HeadLaw law = laws.apply(line);
        double most = begins == (side == Side.DRAWN) ? law.greatestFlow() : -law.leastFlow();
        if (most > 0 && most >= leastM3PerS && !swallowed && reached.add(next)) {
          waiting.add(next);
        }
      }
    }
    return reached;
  }

  /** What can come to a point from nowhere else, m³/s, or, of what is put in, leave there. */
  private double fromOutsideM3PerS(Point point) {
    boolean unbounded =
        side == Side.DRAWN ? gives(point) : takes(point) || starved.containsKey(point.name());
    double bounded = side == Side.DRAWN ? starved.getOrDefault(point.name(), 0.0) : 0;
    return unbounded ? Double.POSITIVE_INFINITY : Math.max(bounded, -wanted(point));
  }

  /** What this side wants at a point, m³/s; negative if the point helps instead. */
  private double wanted(Point point) {
    return side.wanted(draws.getOrDefault(point.name(), 0.0));
  }

  private void addPoint(Point point) {
    String vertex = vertex(point.name());
    double wanted = wanted(point);
    addEdge(vertex, SINK, Math.max(0, wanted));
    addEdge(SOURCE, vertex, Math.max(0, -wanted));
    addPath(WORLD, vertex, gives(point) ? PLENTY * all : 0);
    addPath(WORLD, vertex, starved.getOrDefault(point.name(), 0.0));
    boolean swallows = starved.containsKey(point.name());
    addPath(vertex, WORLD, takes(point) || swallows ? PLENTY * all : 0);
  }

  /** Whether as much water as one likes can come in at a point. */
  private boolean gives(Point point) {
    return isHeld(point) || (spills(point) && leastSpill(point) < 0);
  }

  private static double leastSpill(Point point) {
    return point.spill().map(spill -> spill.law().leastFlow()).orElse(0.0);
  }

  /** Whether as much water as one likes can leave at a point. */
  private boolean takes(Point point) {
    return isHeld(point) || spills(point);
  }

  private boolean isHeld(Point point) {
    return point.heldHeadM().isPresent() && !closed.contains(point.name());
  }

  private boolean spills(Point point) {
    return point.spill().isPresent() && !closed.contains(point.name());
  }

  private static String vertex(PointName name) {
    return "point " + name.value();
  }

  /** Lets water run from one vertex to another. */
  private void addPath(String from, String to, double capacity) {
    if (side == Side.DRAWN) {
      addEdge(from, to, Math.min(PLENTY * all, capacity));
    } else {
      addEdge(to, from, Math.min(PLENTY * all, capacity));
    }
  }

  private void addEdge(String from, String to, double capacity) {
    if (capacity <= 0 || from.equals(to)) {
      return;
    }
    DefaultWeightedEdge edge = flows.getEdge(from, to);
    if (edge == null) {
      flows.setEdgeWeight(flows.addEdge(from, to), capacity / all);
    } else {
      flows.setEdgeWeight(edge, flows.getEdgeWeight(edge) + capacity / all);
    }
  }
}
