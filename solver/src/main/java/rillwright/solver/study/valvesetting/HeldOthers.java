package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.law.LimitedLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.Wishes;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * A network in which what goes elsewhere is held back: falls that none of the valves holds back get
 * no more than their wish, and valves that feed no wished fall are shut. What a fall lacks then it
 * lacks for want of head, not of a valve.
 *
 * @param favoured falls that get more than their share
 * @param leftAlone valves that feed no fall with a wish
 */
record HeldOthers(Wishes wishes, Set<PointName> favoured, List<ValvePlace> leftAlone) {
  HeldOthers {
    favoured = new LinkedHashSet<>(favoured);
    leftAlone = List.copyOf(leftAlone);
  }

  /** The network for one fall: all others are held back. */
  Network in(Network network, PointName fall) {
    Network held = shut(network);
    for (PointName other : favoured) {
      List<Line> ways =
          network.lines().stream()
              .filter(line -> line.to().equals(other) || line.from().equals(other))
              .toList();
      if (!other.equals(fall) && ways.size() == 1) {
        Line way = ways.get(0);
        List<Part> parts = new ArrayList<>(held.line(way.name()).parts());
        LimitedLaw limit = new LimitedLaw(NoLoss.bothWays(), wishes.at(other));
        parts.add(new Loss(limit, Optional.empty()));
        held = held.withLine(way.withParts(parts));
      }
    }
    return held;
  }

  /** With the valves that feed no wished fall shut, unless something else needs that water. */
  private Network shut(Network network) {
    Network shut = network;
    for (ValvePlace place : leftAlone) {
      shut = shut.withPart(place.line(), place.partIndex(), place.in(network).shut());
    }
    try {
      SteadyStateFinder.find(shut);
      return shut;
    } catch (NoBalance drawsGoShort) {
      return network;
    }
  }
}
