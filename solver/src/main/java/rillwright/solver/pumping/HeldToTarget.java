package rillwright.solver.pumping;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.LimitedLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;

/** A network in which falls get no more than their target, as if a valve at each held them back. */
public final class HeldToTarget {
  private HeldToTarget() {}

  /**
   * A network with some falls held to their target.
   *
   * @param falls with a target; those that more than one line joins are left as they are
   */
  public static Network of(Network network, Targets targets, Collection<PointName> falls) {
    Network held = network;
    for (PointName fall : falls) {
      List<Line> ways = network.lines().stream().filter(line -> line.joins(fall)).toList();
      if (ways.size() == 1) {
        Line way = held.line(ways.get(0).name());
        List<Part> parts = new ArrayList<>(way.parts());
        LimitedLaw limit = new LimitedLaw(NoLoss.bothWays(), targets.at(fall));
        parts.add(new Loss(limit, Optional.empty()));
        held = held.withLine(way.withParts(parts));
      }
    }
    return held;
  }
}
