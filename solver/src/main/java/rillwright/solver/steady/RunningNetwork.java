package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.Shut;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/**
 * A network as its lines run: one that does not start is shut, one that is vented ends in air at
 * its high point, and what comes out there is put in at the point that it falls to.
 */
final class RunningNetwork {
  private final Network network;
  private final Map<LineName, PointName> fallsTo = new LinkedHashMap<>();
  private final Set<LineName> shut = new HashSet<>();

  /**
   * A network as it runs.
   *
   * @param courses of the lines that do not run full
   */
  RunningNetwork(Network written, Map<LineName, Course> courses) {
    List<Point> points = new ArrayList<>(written.points());
    List<Line> lines = new ArrayList<>();
    for (Line line : written.lines()) {
      Course course = courses.getOrDefault(line.name(), new Course.Full());
      if (course instanceof Course.Vented vented) {
        Outlet vent = vent(written, line, vented);
        points.add(vent);
        lines.add(shortened(line, vented, vent));
        fallsTo.put(line.name(), vented.forward() ? line.to() : line.from());
      } else {
        lines.add(line);
        if (course instanceof Course.NotStarted) {
          shut.add(line.name());
        }
      }
    }
    this.network = fallsTo.isEmpty() ? written : written.with(points, lines);
  }

  /** As it runs. */
  Network network() {
    return network;
  }

  /** The law of one of its lines, as it runs. */
  HeadLaw lawOf(Line line) {
    return shut.contains(line.name()) ? new Shut() : network.lawOf(line);
  }

  /** The vented lines and the points to which their water falls. */
  Map<LineName, PointName> fallsTo() {
    return fallsTo;
  }

  private static Outlet vent(Network network, Line line, Course.Vented vented) {
    HighPoint high = (HighPoint) line.parts().get(vented.highPoint());
    PointName name = new PointName("vent of " + line.name());
    while (network.findPoint(name).isPresent()) {
      name = new PointName(name + "'");
    }
    return new Outlet(
        name, high.elevationM(), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty());
  }

  private static Line shortened(Line line, Course.Vented vented, Outlet vent) {
    int at = vented.highPoint();
    HighPoint high = (HighPoint) line.parts().get(at);
    LineEnd end = new LineEnd(vent.usualEndLoss(), high.pipeBore().or(line::mainBore));
    List<Part> parts = line.parts();
    return vented.forward()
        ? new Line(
            line.name(),
            line.from(),
            vent.name(),
            line.pipeBore(),
            parts.subList(0, at),
            line.entrance(),
            end)
        : new Line(
            line.name(),
            vent.name(),
            line.to(),
            line.pipeBore(),
            parts.subList(at + 1, parts.size()),
            end,
            line.exit());
  }
}
