package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * A network in which a line ends in air at its high point: what is left when its siphon is vented.
 */
final class VentedLine {
  private VentedLine() {}

  /** The steady state then; empty if there is none. */
  static Optional<SteadyState> stateOf(Network network, Line line, int highPointIndex) {
    HighPoint highPoint = (HighPoint) line.parts().get(highPointIndex);
    PointName vent = unusedName(network);
    Outlet end =
        new Outlet(
            vent,
            highPoint.elevationM(),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty());
    Line shortened =
        new Line(
            line.name(),
            line.from(),
            vent,
            line.pipeBore(),
            line.parts().subList(0, highPointIndex),
            line.entrance(),
            new LineEnd(end.usualEndLoss(), highPoint.pipeBore().or(line::mainBore)));
    List<Point> points = new ArrayList<>(network.points());
    points.add(end);
    List<Line> lines =
        network.lines().stream().map(other -> other.equals(line) ? shortened : other).toList();
    try {
      return Optional.of(
          SteadyStateFinder.find(
              new Network(network.water(), network.siteElevationM(), points, lines)));
    } catch (NoBalance restNeedsTheLine) {
      return Optional.empty();
    }
  }

  private static PointName unusedName(Network network) {
    String name = "vent";
    while (network.points().stream().map(p -> p.name().value()).toList().contains(name)) {
      name += "'";
    }
    return new PointName(name);
  }
}
