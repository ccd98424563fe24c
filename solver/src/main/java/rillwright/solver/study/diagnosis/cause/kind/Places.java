package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** Places in a network that causes ask for. */
final class Places {
  private Places() {}

  static List<PartPlace> ofParts(Network network, Predicate<Part> kind) {
    return PartPlace.list(network, (line, index) -> kind.test(line.parts().get(index)));
  }

  static Part part(Network network, PartPlace place) {
    return network.line(place.line()).parts().get(place.index());
  }

  static List<Line> withRun(Network network) {
    return network.lines().stream().filter(line -> line.has(Run.class)).toList();
  }

  static List<Fall> falls(Network network) {
    return network.points(Fall.class);
  }

  /** A running pump's place. */
  static boolean isRunningPump(Part part) {
    return part instanceof Pump pump && pump.set().speed() > 0;
  }

  static OptionalInt firstIndex(Line line, Predicate<Part> kind) {
    for (int i = 0; i < line.parts().size(); i++) {
      if (kind.test(line.parts().get(i))) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** Whether a part stands downstream of a skimmer in a line that ends in a chamber. */
  static boolean betweenSkimmerAndChamber(Network network, Line line, int index) {
    OptionalInt skimmer = firstIndex(line, Skimmer.class::isInstance);
    return skimmer.isPresent()
        && skimmer.getAsInt() < index
        && network.point(line.to()) instanceof Chamber;
  }

  /** Whether water comes to a part from a pump, in its own line or through lines upstream of it. */
  static boolean afterPump(Network network, Line line, int index) {
    OptionalInt pump = firstIndex(line, Pump.class::isInstance);
    if (pump.isPresent()) {
      return pump.getAsInt() < index;
    }
    return fedByPumps(network).contains(line.name());
  }

  /** The lines that begin where a pumped line ends, and those that go on from them. */
  private static Set<LineName> fedByPumps(Network network) {
    Set<LineName> fed = new LinkedHashSet<>();
    Deque<PointName> waiting = new ArrayDeque<>();
    for (Line line : network.lines()) {
      if (line.has(Pump.class)) {
        waiting.add(line.to());
      }
    }
    while (!waiting.isEmpty()) {
      PointName point = waiting.pop();
      for (Line line : network.lines()) {
        boolean goesOn = line.from().equals(point) && network.point(point).heldHeadM().isEmpty();
        if (goesOn && fed.add(line.name())) {
          waiting.add(line.to());
        }
      }
    }
    return fed;
  }
}
