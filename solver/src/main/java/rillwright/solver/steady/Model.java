package rillwright.solver.steady;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.solver.balance.linear.EdgePattern;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.Shut;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.DrawCheck;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.network.topology.UnmetDraw;

/**
 * A network numbered for the balance: a node for each point, a link for each line, and for each way
 * out of the network a link to a held node outside. A starved chamber has two nodes: one held at
 * its intake, which water running into it sees, and one from which water is drawn; each of its
 * lines is then two links, one for each direction, and what is not drawn goes over to the intake.
 */
final class Model {
  /**
   * Flows of a balance that is like one to be found, m³/s, as far as they are known: the search
   * begins there.
   *
   * @param lineFlow along a line
   * @param outflow over a fall or out of an outlet
   * @param edges of its links
   */
  record Near(
      Function<LineName, OptionalDouble> lineFlow,
      Function<PointName, OptionalDouble> outflow,
      Optional<EdgePattern> edges) {
    /** None is known. */
    static final Near NOTHING =
        new Near(line -> OptionalDouble.empty(), point -> OptionalDouble.empty(), Optional.empty());
  }

  private final Network network;
  private final RunningNetwork running;
  private final NetworkGraph graph;
  private final Imposed imposed;

  /** Those whose flow follows from their law. */
  private final List<Line> lines;

  /**
   * A model.
   *
   * @param graph of the network as it runs
   */
  Model(RunningNetwork running, NetworkGraph graph, Imposed imposed) {
    this.network = running.network();
    this.graph = graph;
    this.running = running;
    this.imposed = imposed;
    this.lines =
        network.lines().stream()
            .filter(line -> !imposed.lineFlowM3PerS().containsKey(line.name()))
            .toList();
  }

  /** Throws if points are joined to nothing. */
  void check() {
    List<PointName> floating = graph.floatingPoints();
    if (!floating.isEmpty()) {
      throw new NoBalance(new NoBalance.FloatingPoints(floating));
    }
  }

  /**
   * The draws that cannot be met, by what comes into these starved chambers among the rest.
   *
   * @param falling what falls out of vented lines, m³/s
   */
  List<UnmetDraw> unmetDraws(Map<PointName, Starved> starved, Map<LineName, Double> falling) {
    Map<PointName, Double> draws = draws(falling);
    if (draws.isEmpty()) {
      return List.of();
    }
    Map<PointName, Double> inflows = new LinkedHashMap<>();
    starved.forEach((chamber, state) -> inflows.put(chamber, state.inflowM3PerS()));
    return DrawCheck.unmet(
        graph, this::freeLawOf, inflows, draws, imposed.outflowM3PerS().keySet());
  }

  /** The law of a line; one with an imposed flow carries no other. */
  private HeadLaw freeLawOf(Line line) {
    return imposed.lineFlowM3PerS().containsKey(line.name()) ? new Shut() : running.lawOf(line);
  }

  /**
   * What is taken out at points by a fixed flow: draws, imposed outflows, the ends of lines with an
   * imposed flow, and, as put in, what falls out of vented lines.
   */
  private Map<PointName, Double> draws(Map<LineName, Double> falling) {
    Map<PointName, Double> draws = new HashMap<>();
    falling.forEach((line, flow) -> addUnlessHeld(draws, running.fallsTo().get(line), -flow));
    for (Point point : network.points()) {
      if (point.drawM3PerS() != 0) {
        draws.merge(point.name(), point.drawM3PerS(), Double::sum);
      }
    }
    imposed.outflowM3PerS().forEach((point, flow) -> draws.merge(point, flow, Double::sum));
    imposed
        .lineFlowM3PerS()
        .forEach(
            (name, flow) -> {
              Line line = network.line(name);
              addUnlessHeld(draws, line.from(), flow);
              addUnlessHeld(draws, line.to(), -flow);
            });
    return draws;
  }

  private void addUnlessHeld(Map<PointName, Double> draws, PointName point, double draw) {
    if (imposed.heldHeadM(network.point(point)).isEmpty()) {
      draws.merge(point, draw, Double::sum);
    }
  }

  /**
   * The balance with these chambers starved; empty map for none.
   *
   * @param falling what falls out of vented lines, m³/s
   * @param near flows near which its own are
   */
  Solved balance(Map<PointName, Starved> starved, Map<LineName, Double> falling, Near near) {
    Map<PointName, Double> draws = draws(falling);
    Numbering numbering = new Numbering();
    for (Point point : network.points()) {
      double draw = draws.getOrDefault(point.name(), 0.0);
      double comesIn =
          starved.containsKey(point.name()) ? starved.get(point.name()).inflowM3PerS() : 0;
      numbering.addPoint(point.name(), imposed.heldHeadM(point), draw - comesIn);
    }
    starved.forEach((chamber, state) -> numbering.addIntake(chamber, state.intakeM()));
    lines.forEach(
        line -> numbering.addLine(line, running.lawOf(line), near.lineFlow().apply(line.name())));
    starved.keySet().forEach(numbering::addSurplus);
    for (Point point : network.points()) {
      if (point.spill().isPresent() && !imposed.outflowM3PerS().containsKey(point.name())) {
        numbering.addSpill(point.name(), point.spill().get(), near.outflow().apply(point.name()));
      }
    }
    return numbering.balance(near.edges());
  }
}
