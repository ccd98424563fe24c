package rillwright.solver.pumping;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;

/**
 * The head at no flow that a pump must exceed so that its water comes over the high points on its
 * way to the wishes.
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
    Ways ways = new Ways(network, new HashSet<>(Set.of(line.name())));
    ways.follow(line.to(), lost, greatest);
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

  /** The ways on from the pump's line, through closed points and lines without pumps. */
  private static final class Ways {
    private final Network network;
    private final Set<LineName> passed;
    private Optional<LeastShutOff> greatest = Optional.empty();

    Ways(Network network, Set<LineName> passed) {
      this.network = network;
      this.passed = passed;
    }

    /**
     * Follows the water from a point.
     *
     * @param soFar what the way to it asks for
     */
    void follow(PointName name, double lost, Optional<LeastShutOff> soFar) {
      Point point = network.point(name);
      if (point.wantM3PerS().orElse(0) > 0 && soFar.isPresent()) {
        boolean more = greatest.isEmpty() || soFar.get().headM() > greatest.get().headM();
        greatest = more ? soFar : greatest;
      }
      if (point.heldHeadM().isPresent() || point.spill().isPresent()) {
        return;
      }
      for (Line line : network.lines()) {
        boolean forward = line.from().equals(name) && network.lawOf(line).greatestFlow() > 0;
        boolean backward = line.to().equals(name) && network.lawOf(line).leastFlow() < 0;
        boolean pumped = line.parts().stream().anyMatch(Pump.class::isInstance);
        if ((forward || backward) && !pumped && passed.add(line.name())) {
          double before = lost;
          Optional<LeastShutOff> asked = soFar;
          for (int i = 0; i < line.parts().size(); i++) {
            if (line.parts().get(i) instanceof CheckValve valve) {
              before += valve.crackingHeadM();
            } else if (line.parts().get(i) instanceof HighPoint climb && !isPrimed(line)) {
              asked = greater(asked, line, climb, before);
            }
          }
          follow(forward ? line.to() : line.from(), before, asked);
          passed.remove(line.name());
        }
      }
    }
  }
}
