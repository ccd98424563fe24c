package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.balance.Balance;
import rillwright.solver.balance.BalanceProblem;
import rillwright.solver.balance.BalanceProblem.Link;
import rillwright.solver.balance.BalanceProblem.Node;
import rillwright.solver.balance.Balancer;
import rillwright.solver.law.HeadLaw;
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
 * its intake, which lines entering it see, and one from which lines leaving it draw.
 */
final class Model {
  private final Network network;
  private final Imposed imposed;
  private final Map<LineName, HeadLaw> laws = new LinkedHashMap<>();

  Model(Network network, Imposed imposed) {
    this.network = network;
    this.imposed = imposed;
    for (Line line : network.lines()) {
      if (!imposed.lineFlowM3PerS().containsKey(line.name())) {
        laws.put(line.name(), network.lawOf(line));
      }
    }
  }

  /** Throws if the network has no balanced state. */
  void check() {
    List<PointName> floating = new NetworkGraph(network).floatingPoints();
    if (!floating.isEmpty()) {
      throw new NoBalance(new NoBalance.FloatingPoints(floating));
    }
    checkDraws(Map.of());
  }

  /** Throws if draws cannot be met, by what comes into these starved chambers among the rest. */
  private void checkDraws(Map<PointName, Starved> starved) {
    Map<PointName, Double> draws = draws();
    if (draws.isEmpty()) {
      return;
    }
    starved.forEach((chamber, state) -> draws.merge(chamber, -state.inflowM3PerS(), Double::sum));
    Map<Line, HeadLaw> carrying = new LinkedHashMap<>();
    laws.forEach(
        (name, law) -> {
          Line line = network.line(name);
          if (!isEntering(starved, line, line.from()) && !isEntering(starved, line, line.to())) {
            carrying.put(line, law);
          }
        });
    List<UnmetDraw> unmet = DrawCheck.unmet(network, carrying, draws);
    if (!unmet.isEmpty()) {
      throw new NoBalance(new NoBalance.UnmetDraws(unmet));
    }
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
    if (!starved.isEmpty()) {
      checkDraws(starved);
    }
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
    Map<LineName, Integer> linkOf = new LinkedHashMap<>();
    laws.forEach(
        (name, law) -> {
          Line line = network.line(name);
          linkOf.put(name, links.size());
          links.add(
              new Link(
                  endNode(line, line.from(), starved, nodeOf, intakeNodeOf),
                  endNode(line, line.to(), starved, nodeOf, intakeNodeOf),
                  lawBeside(starved, line, law)));
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
    return new Solved(balance, nodeOf, linkOf, spillOf);
  }

  private static int endNode(
      Line line,
      PointName end,
      Map<PointName, Starved> starved,
      Map<PointName, Integer> nodeOf,
      Map<PointName, Integer> intakeNodeOf) {
    return isEntering(starved, line, end) ? intakeNodeOf.get(end) : nodeOf.get(end);
  }

  /** A line that enters a starved chamber does not run dry what little stands in it. */
  private static HeadLaw lawBeside(Map<PointName, Starved> starved, Line line, HeadLaw law) {
    if (isEntering(starved, line, line.to())) {
      return new OneWayLaw(law, Direction.FORWARD);
    }
    return isEntering(starved, line, line.from()) ? new OneWayLaw(law, Direction.BACKWARD) : law;
  }

  private static boolean isEntering(Map<PointName, Starved> starved, Line line, PointName end) {
    return starved.containsKey(end) && starved.get(end).entering().contains(line.name());
  }

  /** A balance with the numbers of its points, lines and spills. */
  record Solved(
      Balance balance,
      Map<PointName, Integer> nodeOf,
      Map<LineName, Integer> linkOf,
      Map<PointName, Integer> spillOf) {

    OptionalDouble headM(PointName point) {
      return balance.headM(nodeOf.get(point));
    }

    double flowM3PerS(LineName line) {
      return balance.flowM3PerS(linkOf.get(line));
    }
  }
}
