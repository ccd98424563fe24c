package rillwright.cli.study.section;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import rillwright.cli.study.section.Measures.Source;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.pumping.PumpSuction;

/**
 * Elevations along lines as far as the file says them: of tees, crests, outlets, gauges, high
 * points, pumps' inlets and sills. Between those that it says a pipe is taken to run straight.
 */
final class Elevations {
  /** How deep a pipe is drawn below open water where nobody says it, m. */
  private static final double BELOW_WATER_M = 0.3;

  private final Network network;

  /** Where tees are drawn whose elevation the file does not say, m. */
  private final Map<PointName, Double> taken = new HashMap<>();

  Elevations(Network network) {
    this.network = network;
  }

  /** An elevation and where it comes from. */
  record Elevation(double elevationM, Source source) {}

  /** What is known of a point, m: where pipes end there. */
  static OptionalDouble knownM(Point point) {
    if (point instanceof Tee tee) {
      return tee.elevationM();
    } else if (point instanceof Fall fall) {
      return OptionalDouble.of(fall.crestM());
    } else if (point instanceof Outlet outlet) {
      return OptionalDouble.of(outlet.elevationM());
    }
    return OptionalDouble.empty();
  }

  /** Where a tee is taken to lie from now on, if the file does not say it. */
  void take(PointName point, double elevationM) {
    taken.putIfAbsent(point, elevationM);
  }

  /** Elevations along a line, in its direction. */
  static final class Along {
    private final List<Elevation> places;

    private Along(List<Elevation> places) {
      this.places = List.copyOf(places);
    }

    /** At its first point. */
    Elevation start() {
      return places.get(0);
    }

    /** Before a part. */
    Elevation before(int index) {
      return places.get(placeBefore(index));
    }

    /** After a part. */
    Elevation after(int index) {
      return places.get(placeBefore(index) + 1);
    }

    /** At its second point. */
    Elevation end() {
      return places.get(places.size() - 1);
    }

    /** Two places a part between the two ends. */
    private static int placeBefore(int index) {
      return 2 * index + 1;
    }
  }

  /** Those of a line. */
  Along along(Line line) {
    int last = Along.placeBefore(line.parts().size());
    TreeMap<Integer, Elevation> anchors = new TreeMap<>();
    for (int i = 0; i < line.parts().size(); i++) {
      OptionalDouble known = knownM(line, i);
      if (known.isPresent()) {
        Elevation here = new Elevation(known.getAsDouble(), Source.FILE);
        anchors.put(Along.placeBefore(i), here);
        anchors.put(Along.placeBefore(i) + 1, here);
      }
    }
    end(line.from(), Optional.ofNullable(anchors.get(1))).ifPresent(it -> anchors.put(0, it));
    end(line.to(), Optional.ofNullable(anchors.get(last - 1)))
        .ifPresent(it -> anchors.put(last, it));
    if (anchors.isEmpty()) {
      anchors.put(0, new Elevation(lowestM(), Source.ASSUMED));
    }
    List<Elevation> places = new ArrayList<>();
    for (int at = 0; at <= last; at++) {
      places.add(anchors.containsKey(at) ? anchors.get(at) : between(line, anchors, at));
    }
    return new Along(places);
  }

  private OptionalDouble knownM(Line line, int index) {
    Part part = line.parts().get(index);
    if (part instanceof Gauge gauge) {
      return OptionalDouble.of(gauge.elevationM());
    } else if (part instanceof HighPoint point) {
      return OptionalDouble.of(point.elevationM());
    } else if (part instanceof Skimmer skimmer) {
      return OptionalDouble.of(skimmer.sillM());
    } else if (part instanceof Pump) {
      return PumpSuction.elevationM(network, line, index);
    } else if (part instanceof PlannedPump pump) {
      boolean inChamber = index == 0 && network.point(line.from()) instanceof Chamber;
      return pump.inlet().elevationM().isEmpty() && inChamber
          ? OptionalDouble.of(((Chamber) network.point(line.from())).intakeM())
          : pump.inlet().elevationM();
    }
    return OptionalDouble.empty();
  }

  /**
   * What is known of a line's end; in open water it is that of what stands beside it.
   *
   * @param beside the elevation there, where it is known
   */
  private Optional<Elevation> end(PointName name, Optional<Elevation> beside) {
    Point point = network.point(name);
    OptionalDouble known = knownM(point);
    if (known.isPresent()) {
      return Optional.of(new Elevation(known.getAsDouble(), Source.FILE));
    } else if (point instanceof Basin basin) {
      return beside.or(
          () -> Optional.of(new Elevation(basin.levelM() - depthM(basin), Source.STRAIGHT)));
    } else if (point instanceof Chamber chamber) {
      return beside.or(() -> Optional.of(new Elevation(chamber.intakeM(), Source.STRAIGHT)));
    }
    return Optional.ofNullable(taken.get(name)).map(it -> new Elevation(it, Source.ASSUMED));
  }

  private static double depthM(Basin basin) {
    return basin
        .shape()
        .map(shape -> Math.min(BELOW_WATER_M, (basin.levelM() - shape.floorM()) / 2))
        .filter(depth -> depth > 0)
        .orElse(BELOW_WATER_M);
  }

  /** The lowest level that the network's open water or crests have, m. */
  private double lowestM() {
    return network.points().stream()
        .flatMapToDouble(
            point ->
                point instanceof Chamber chamber
                    ? OptionalDouble.of(chamber.intakeM()).stream()
                    : point.heldHeadM().isPresent()
                        ? point.heldHeadM().stream()
                        : knownM(point).stream())
        .min()
        .orElse(0);
  }

  private static Elevation between(Line line, NavigableMap<Integer, Elevation> anchors, int at) {
    Map.Entry<Integer, Elevation> before = anchors.lowerEntry(at);
    Map.Entry<Integer, Elevation> behind = anchors.higherEntry(at);
    if (before == null || behind == null) {
      double only = (before == null ? behind : before).getValue().elevationM();
      return new Elevation(only, Source.ASSUMED);
    }
    double whole = lengthM(line, before.getKey(), behind.getKey());
    double share =
        whole > 0
            ? lengthM(line, before.getKey(), at) / whole
            : (double) (at - before.getKey()) / (behind.getKey() - before.getKey());
    double low = before.getValue().elevationM();
    return new Elevation(
        low + share * (behind.getValue().elevationM() - low),
        isBetween(line, before, behind) ? Source.STRAIGHT : Source.ASSUMED);
  }

  /** Whether nothing is assumed at either end, nor does a pump stand between nobody knows where. */
  private static boolean isBetween(
      Line line, Map.Entry<Integer, Elevation> before, Map.Entry<Integer, Elevation> behind) {
    return before.getValue().source() != Source.ASSUMED
        && behind.getValue().source() != Source.ASSUMED
        && parts(line, before.getKey(), behind.getKey()).noneMatch(Pump.class::isInstance);
  }

  private static double lengthM(Line line, int from, int to) {
    return parts(line, from, to).mapToDouble(Elevations::lengthM).sum();
  }

  /** The parts between two places. */
  private static Stream<Part> parts(Line line, int from, int to) {
    return line.parts().subList(from / 2, to / 2).stream();
  }

  /** Length of pipe, m. */
  static double lengthM(Part part) {
    return part instanceof Run run ? run.lengthM() : 0;
  }
}
