package rillwright.solver.pumping;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.solver.law.LimitedLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.NetworkGraph;

/** A network in which falls get no more than their target, as if a valve at each held them back. */
public final class HeldToTarget {
  private HeldToTarget() {}

  /**
   * A network with some falls held to their target.
   *
   * @param falls with a target; those that more than one line joins are left as they are
   */
  public static Network of(Network network, Targets targets, Collection<PointName> falls) {
    NetworkGraph graph = new NetworkGraph(network);
    Map<LineName, Line> held = new LinkedHashMap<>();
    for (PointName fall : falls) {
      List<Line> ways = graph.linesAt(fall);
      if (ways.size() == 1) {
        Line way = held.getOrDefault(ways.get(0).name(), ways.get(0));
        List<Part> parts = new ArrayList<>(way.parts());
        LimitedLaw limit = new LimitedLaw(NoLoss.bothWays(), targets.at(fall));
        parts.add(new Loss(limit, Optional.empty()));
        held.put(way.name(), way.withParts(parts));
      }
    }
    return network.withLines(held.values());
  }
}
