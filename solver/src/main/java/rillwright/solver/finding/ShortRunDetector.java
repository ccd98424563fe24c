package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.Run;
import rillwright.solver.network.Tee;

/** Lines whose pipe is shorter than it must climb and fall from end to end. */
final class ShortRunDetector implements NetworkDetector {

  /** Lengths and levels closer than this, m, are the same: they are written in whole inches. */
  private static final double SAME_M = 1e-6;

  /** Between which levels a pipe's end or high point lies, m. */
  private record Place(double lowestM, double highestM) {
    private static final Place ANYWHERE =
        new Place(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    private static Place at(double levelM) {
      return new Place(levelM, levelM);
    }

    private double leastRiseTo(Place next) {
      return Math.max(0, Math.max(next.lowestM - highestM, lowestM - next.highestM));
    }
  }

  @Override
  public List<Finding> findIn(Network network) {
    List<Finding> findings = new ArrayList<>();
    for (Line line : network.lines()) {
      double length = line.placed(Run.class).stream().mapToDouble(it -> it.part().lengthM()).sum();
      double rise = leastRise(network, line);
      if (length > 0 && length < rise - SAME_M) {
        findings.add(tooShort(line.name().value(), length, rise));
      }
    }
    return findings;
  }

  /** How much a line climbs and falls at the least, m. */
  private static double leastRise(Network network, Line line) {
    List<Place> places = new ArrayList<>();
    places.add(place(network, network.point(line.from())));
    for (Placed<HighPoint> high : line.placed(HighPoint.class)) {
      places.add(Place.at(high.part().elevationM()));
    }
    places.add(place(network, network.point(line.to())));
    double rise = 0;
    for (int i = 1; i < places.size(); i++) {
      rise += places.get(i - 1).leastRiseTo(places.get(i));
    }
    return rise;
  }

  private static Place place(Network network, Point point) {
    if (point instanceof Basin basin) {
      return new Place(Double.NEGATIVE_INFINITY, basin.levelM());
    }
    if (point instanceof Chamber chamber) {
      double water =
          network.points(Basin.class).stream()
              .mapToDouble(Basin::levelM)
              .max()
              .orElse(Double.POSITIVE_INFINITY);
      return new Place(chamber.floorM(), Math.max(chamber.intakeM(), chamber.topM().orElse(water)));
    }
    if (point instanceof Fall fall) {
      return Place.at(fall.crestM());
    }
    if (point instanceof Outlet outlet) {
      return Place.at(outlet.elevationM());
    }
    return point instanceof Tee tee && tee.elevationM().isPresent()
        ? Place.at(tee.elevationM().getAsDouble())
        : Place.ANYWHERE;
  }

  private static Finding tooShort(String at, double lengthM, double riseM) {
    return Finding.of(Severity.PROBLEM, "short-run", at, "The pipe of \"" + at + "\" is ")
        .length("length", lengthM)
        .then(" long in all, but its ends and high points are ")
        .length("rise", riseM)
        .then(
            " apart in height, and no pipe can be shorter than that. Check its length and the"
                + " levels.");
  }
}
