package rillwright.cli.study.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Spill;
import rillwright.solver.steady.SteadyState;

/**
 * The lines of a network in trails that follow the water, each line in one of them. A trail begins
 * at open water or where the water leaves an earlier one; where ways part it follows the one that
 * leads to the highest crest or outlet, then the one with the greatest flow.
 */
final class Trails {
  private final Network network;
  private final List<Passage> left;

  Trails(Network network, Optional<SteadyState> state) {
    this.network = network;
    this.left =
        new ArrayList<>(network.lines().stream().map(line -> passage(line, state)).toList());
  }

  private static Passage passage(Line line, Optional<SteadyState> state) {
    double flow = state.map(at -> at.line(line.name()).flowM3PerS()).orElse(0.0);
    return new Passage(line, flow >= 0, Math.abs(flow));
  }

  /** All of them. */
  List<List<Passage>> list() {
    List<Passage> all = List.copyOf(left);
    List<List<Passage>> trails = new ArrayList<>();
    while (!left.isEmpty()) {
      trails.add(trail(first(), all));
    }
    return trails;
  }

  /** A line into whose start no other leads that is left; from open water if there is a choice. */
  private Passage first() {
    Set<PointName> fed = new HashSet<>();
    left.forEach(passage -> fed.add(passage.end()));
    Comparator<Passage> openWaterFirst =
        Comparator.comparing(passage -> isHeld(passage.start()) ? 0 : 1);
    return left.stream()
        .filter(passage -> isHeld(passage.start()) || !fed.contains(passage.start()))
        .min(openWaterFirst.thenComparing(Passage::flowM3PerS, Comparator.reverseOrder()))
        .orElseGet(() -> left.get(0));
  }

  private List<Passage> trail(Passage first, List<Passage> all) {
    List<Passage> trail = new ArrayList<>();
    Set<PointName> met = new HashSet<>(Set.of(first.start()));
    Optional<Passage> next = Optional.of(first);
    while (next.isPresent()) {
      Passage passage = next.get();
      left.remove(passage);
      trail.add(passage);
      boolean goesOn = met.add(passage.end()) && !isHeld(passage.end());
      next = goesOn ? onwardFrom(passage.end(), all) : Optional.empty();
    }
    return trail;
  }

  private Optional<Passage> onwardFrom(PointName point, List<Passage> all) {
    return left.stream()
        .filter(passage -> passage.start().equals(point))
        .max(
            Comparator.comparingDouble((Passage passage) -> highestM(passage.end(), all))
                .thenComparingDouble(Passage::flowM3PerS));
  }

  /** The highest crest, outlet or open water that water gets to from a point, m. */
  private double highestM(PointName start, List<Passage> all) {
    Set<PointName> met = new HashSet<>(Set.of(start));
    List<PointName> open = new ArrayList<>(met);
    double highest = Double.NEGATIVE_INFINITY;
    while (!open.isEmpty()) {
      PointName point = open.remove(open.size() - 1);
      highest = Math.max(highest, endM(network.point(point)));
      if (!isHeld(point)) {
        all.stream()
            .filter(passage -> passage.start().equals(point) && met.add(passage.end()))
            .forEach(passage -> open.add(passage.end()));
      }
    }
    return highest;
  }

  private static double endM(Point point) {
    return Stream.concat(
            point.spill().map(Spill::levelM).stream(), point.heldHeadM().stream().boxed())
        .mapToDouble(Double::doubleValue)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private boolean isHeld(PointName point) {
    return network.point(point).heldHeadM().isPresent();
  }
}
