package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import rillwright.solver.balance.BalanceProblem;
import rillwright.solver.balance.BalanceProblem.Link;
import rillwright.solver.balance.BalanceProblem.Node;
import rillwright.solver.balance.Balancer;
import rillwright.solver.balance.linear.EdgePattern;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.OneWayLaw;
import rillwright.solver.law.OneWayLaw.Direction;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Spill;

/**
 * Gives numbers to what takes part in a balance: points first, then the intakes of starved
 * chambers, then lines, then ways out.
 */
final class Numbering {
  private final List<Node> nodes = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final Map<PointName, Integer> nodeOf = new LinkedHashMap<>();
  private final Map<PointName, Integer> intakeNodeOf = new LinkedHashMap<>();
  private final Map<LineName, List<Integer>> linksOf = new LinkedHashMap<>();
  private final Map<PointName, Integer> surplusOf = new LinkedHashMap<>();
  private final Map<PointName, Integer> spillOf = new LinkedHashMap<>();

  /**
   * The node of a point.
   *
   * @param heldHeadM the head at which it is held, m, if it is
   * @param drawM3PerS taken out there unless its head is held, m³/s
   */
  void addPoint(PointName point, OptionalDouble heldHeadM, double drawM3PerS) {
    nodeOf.put(point, nodes.size());
    nodes.add(heldHeadM.isPresent() ? Node.held(heldHeadM.getAsDouble()) : Node.free(drawM3PerS));
  }

  /** The node that water running into a starved chamber sees, held at its intake. */
  void addIntake(PointName chamber, double intakeM) {
    intakeNodeOf.put(chamber, nodes.size());
    nodes.add(Node.held(intakeM));
  }

  /**
   * The link of a line; two, one for each direction, where a starved chamber is at an end.
   *
   * @param near flow near which it is, m³/s, if one is known
   */
  void addLine(Line line, HeadLaw law, OptionalDouble near) {
    int first = links.size();
    int from = nodeOf.get(line.from());
    int to = nodeOf.get(line.to());
    int intakeAtFrom = intakeNodeOf.getOrDefault(line.from(), from);
    int intakeAtTo = intakeNodeOf.getOrDefault(line.to(), to);
    if (intakeAtFrom == from && intakeAtTo == to) {
      links.add(new Link(from, to, law, near));
    } else {
      links.add(new Link(from, intakeAtTo, new OneWayLaw(law, Direction.FORWARD), part(near, 1)));
      links.add(new Link(intakeAtFrom, to, new OneWayLaw(law, Direction.BACKWARD), part(near, -1)));
    }
    linksOf.put(line.name(), IntStream.range(first, links.size()).boxed().toList());
  }

  /** What of a flow runs in a direction. */
  private static OptionalDouble part(OptionalDouble flow, int direction) {
    return flow.stream().map(q -> direction * Math.max(0, direction * q)).findFirst();
  }

  /** The link by which what comes into a starved chamber and is not drawn goes to its intake. */
  void addSurplus(PointName chamber) {
    surplusOf.put(chamber, links.size());
    links.add(
        new Link(
            nodeOf.get(chamber),
            intakeNodeOf.get(chamber),
            NoLoss.forwardOnly(),
            OptionalDouble.of(0)));
  }

  /**
   * The link of a way out of the network, and the held node outside.
   *
   * @param near flow near which it is, m³/s, if one is known
   */
  void addSpill(PointName point, Spill spill, OptionalDouble near) {
    spillOf.put(point, links.size());
    links.add(new Link(nodeOf.get(point), nodes.size(), spill.law(), near));
    nodes.add(Node.held(spill.levelM()));
  }

  /**
   * Balances it.
   *
   * @param like the edges of a balance like it, if one is known
   */
  Solved balance(Optional<EdgePattern> like) {
    BalanceProblem problem = new BalanceProblem(nodes, links, like);
    return new Solved(problem, Balancer.balance(problem), nodeOf, linksOf, spillOf, surplusOf);
  }
}
