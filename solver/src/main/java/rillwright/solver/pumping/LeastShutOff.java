package rillwright.solver.pumping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.Queue;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;

/**
 * The head at no flow that a pump must exceed so that its water comes over the high points on its
 * way to every target, where there are several ways by the one that asks for the least.
 *
 * @param line with the high point that asks for the most
 * @param headM from the water that the pump draws from, m
 */
public record LeastShutOff(LineName line, double headM) {

  /** What is asked of the pump at a place; empty without a high point on its way. */
  public static Optional<LeastShutOff> at(Network network, PumpPlace place) {
    Line line = network.line(place.line());
    OptionalDouble level =
        HeadNeeded.at(network, place, 0)
            .map(needed -> needed.state().point(line.from()).headM())
            .orElse(OptionalDouble.empty());
    if (level.isEmpty()) {
      return Optional.empty();
    }
    double lost = -level.getAsDouble();
    Optional<LeastShutOff> greatest = Optional.empty();
    Map<Integer, HighPoint> climbs = isPrimed(line) ? Map.of() : line.climbs();
    for (int i = 0; i < line.parts().size(); i++) {
      if (line.parts().get(i) instanceof CheckValve valve) {
        lost += valve.crackingHeadM();
      } else if (line.parts().get(i) instanceof Pump pump && i != place.partIndex()) {
        lost -= pump.set().publishedShutOffHeadM();
      } else if (climbs.containsKey(i) && i > place.partIndex()) {
        greatest = greater(greatest, line, climbs.get(i), lost);
      }
    }
    Ways ways = new Ways(network, line.name());
    ways.follow(new Reached(line.to(), lost, greatest));
    return ways.greatest;
  }

  private static Optional<LeastShutOff> greater(
      Optional<LeastShutOff> known, Line line, HighPoint point, double lost) {
    double head = point.elevationM() + lost;
    return known.isPresent() && known.get().headM() >= head
        ? known
        : Optional.of(new LeastShutOff(line.name(), head));
  }

  private static boolean isPrimed(Line line) {
    return line.climbs().values().stream().anyMatch(point -> point.air() == HighPoint.Air.PRIMED);
  }

  /**
   * A point that water comes to.
   *
   * @param lostM what check valves on the way take, m
   * @param asked what high points on the way ask for
   */
  private record Reached(PointName point, double lostM, Optional<LeastShutOff> asked) {
    private double askedM() {
      return asked.map(LeastShutOff::headM).orElse(Double.NEGATIVE_INFINITY);
    }
  }

  /**
   * The ways on from the pump's line, through closed points and lines without pumps: to each point
   * by the one that asks for the least, and on from there once more only where less is lost.
   *
   * <p>Source: Dijkstra, E. W. (1959), "A note on two problems in connexion with graphs",
   * Numerische Mathematik 1, 269–271 (from memory).
   */
  private static final class Ways {
    private final Network network;
    private final LineName pumpLine;
    private final Map<PointName, List<Line>> linesAt = new HashMap<>();
    private final Map<PointName, Double> leastLostM = new HashMap<>();
    private final Queue<Reached> waiting =
        new PriorityQueue<>(
            Comparator.comparingDouble(Reached::askedM).thenComparingDouble(Reached::lostM));
    private Optional<LeastShutOff> greatest = Optional.empty();

    Ways(Network network, LineName pumpLine) {
      this.network = network;
      this.pumpLine = pumpLine;
      for (Line line : network.lines()) {
        if (!line.has(Pump.class)) {
          linesAt.computeIfAbsent(line.from(), point -> new ArrayList<>()).add(line);
          linesAt.computeIfAbsent(line.to(), point -> new ArrayList<>()).add(line);
        }
      }
    }

    void follow(Reached first) {
      waiting.add(first);
      while (!waiting.isEmpty()) {
        Reached next = waiting.remove();
        Double before = leastLostM.get(next.point);
        if (before == null || next.lostM < before) {
          leastLostM.put(next.point, next.lostM);
          Point point = network.point(next.point);
          if (before == null && point.targetM3PerS().orElse(0) > 0 && next.asked.isPresent()) {
            greatest =
                greatest.isEmpty() || next.askedM() > greatest.get().headM()
                    ? next.asked
                    : greatest;
          }
          if (point.heldHeadM().isEmpty() && point.spill().isEmpty()) {
            linesAt.getOrDefault(next.point, List.of()).forEach(line -> pass(next, line));
          }
        }
      }
    }

    private void pass(Reached before, Line line) {
      HeadLaw law = network.lawOf(line);
      boolean forward = line.from().equals(before.point) && law.greatestFlow() > 0;
      boolean backward = line.to().equals(before.point) && law.leastFlow() < 0;
      if ((forward || backward) && !line.name().equals(pumpLine)) {
        double lost = before.lostM;
        Optional<LeastShutOff> asked = before.asked;
        for (Part part : line.parts()) {
          if (part instanceof CheckValve valve) {
            lost += valve.crackingHeadM();
          } else if (part instanceof HighPoint climb && !isPrimed(line)) {
            asked = greater(asked, line, climb, lost);
          }
        }
        waiting.add(new Reached(forward ? line.to() : line.from(), lost, asked));
      }
    }
  }
}
