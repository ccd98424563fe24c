package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import rillwright.solver.balance.Balance;
import rillwright.solver.balance.BalanceProblem;
import rillwright.solver.balance.BalanceProblem.Link;
import rillwright.solver.balance.BalanceProblem.Node;
import rillwright.solver.balance.Balancer;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.OneWayLaw;
import rillwright.solver.law.OneWayLaw.Direction;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Spill;
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
  private final Network network;
  private final Imposed imposed;
  private final Map<Line, HeadLaw> laws = new LinkedHashMap<>();

  Model(Network network, Imposed imposed) {
    this.network = network;
    this.imposed = imposed;
    for (Line line : network.lines()) {
      if (!imposed.lineFlowM3PerS().containsKey(line.name())) {
        laws.put(line, network.lawOf(line));
      }
    }
  }

  /** Throws if points are joined to nothing. */
  void check() {
    List<PointName> floating = new NetworkGraph(network).floatingPoints();
    if (!floating.isEmpty()) {
      throw new NoBalance(new NoBalance.FloatingPoints(floating));
    }
  }

  /** The draws that cannot be met, by what comes into these starved chambers among the rest. */
  List<UnmetDraw> unmetDraws(Map<PointName, Starved> starved) {
    Map<PointName, Double> draws = draws();
    if (draws.isEmpty()) {
      return List.of();
    }
    Map<PointName, Double> inflows = new LinkedHashMap<>();
    starved.forEach((chamber, state) -> inflows.put(chamber, state.inflowM3PerS()));
    return DrawCheck.unmet(network, laws, inflows, draws, imposed.outflowM3PerS().keySet());
  }

  /**
   * What is taken out at points by a fixed flow: draws, imposed outflows, and the ends of lines
   * with an imposed flow.
   */
  private Map<PointName, Double> draws() {
    Map<PointName, Double> draws = new HashMap<>();
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
    if (network.point(point).heldHeadM().isEmpty()) {
      draws.merge(point, draw, Double::sum);
    }
  }

  /** The balance with these chambers starved; empty map for none. */
  Solved balance(Map<PointName, Starved> starved) {
    Map<PointName, Double> draws = draws();
    Map<PointName, Integer> nodeOf = new LinkedHashMap<>();
    Map<PointName, Integer> intakeNodeOf = new LinkedHashMap<>();
    List<Node> nodes = new ArrayList<>();
    for (Point point : network.points()) {
      double draw = draws.getOrDefault(point.name(), 0.0);
      double comesIn =
          starved.containsKey(point.name()) ? starved.get(point.name()).inflowM3PerS() : 0;
      nodeOf.put(point.name(), nodes.size());
      nodes.add(
          point.heldHeadM().isPresent()
              ? Node.held(point.heldHeadM().getAsDouble())
              : Node.free(draw - comesIn));
    }
    starved.forEach(
        (chamber, state) -> {
          intakeNodeOf.put(chamber, nodes.size());
          nodes.add(Node.held(state.intakeM()));
        });
    List<Link> links = new ArrayList<>();
    Map<LineName, List<Integer>> linksOf = new LinkedHashMap<>();
    laws.forEach(
        (line, law) -> {
          int first = links.size();
          int from = nodeOf.get(line.from());
          int to = nodeOf.get(line.to());
          int intakeAtFrom = intakeNodeOf.getOrDefault(line.from(), from);
          int intakeAtTo = intakeNodeOf.getOrDefault(line.to(), to);
          if (intakeAtFrom == from && intakeAtTo == to) {
            links.add(new Link(from, to, law));
          } else {
            links.add(new Link(from, intakeAtTo, new OneWayLaw(law, Direction.FORWARD)));
            links.add(new Link(intakeAtFrom, to, new OneWayLaw(law, Direction.BACKWARD)));
          }
          linksOf.put(line.name(), IntStream.range(first, links.size()).boxed().toList());
        });
    Map<PointName, Integer> surplusOf = new LinkedHashMap<>();
    intakeNodeOf.forEach(
        (chamber, intake) -> {
          surplusOf.put(chamber, links.size());
          links.add(new Link(nodeOf.get(chamber), intake, NoLoss.forwardOnly()));
        });
    Map<PointName, Integer> spillOf = new LinkedHashMap<>();
    for (Point point : network.points()) {
      if (point.spill().isPresent() && !imposed.outflowM3PerS().containsKey(point.name())) {
        Spill spill = point.spill().get();
        spillOf.put(point.name(), links.size());
        links.add(new Link(nodeOf.get(point.name()), nodes.size(), spill.law()));
        nodes.add(Node.held(spill.levelM()));
      }
    }
    Balance balance = Balancer.balance(new BalanceProblem(nodes, links));
    return new Solved(balance, nodeOf, linksOf, spillOf, surplusOf);
  }
}
