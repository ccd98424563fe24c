package rillwright.cli.study.jobsheet.materials;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;

/**
 * Joints that a line needs and a file seldom names, less those that it names. Common practice, no
 * source: a bulkhead fitting where a pipe passes the wall of a chamber, of a fall's box, or of a
 * basin that it leaves without a pump or skimmer at its mouth; a union at the outlet of a pump and
 * at its inlet where a pipe leads there, one behind a check valve, and one on both sides of a
 * filter in a pipe, so that these can be lifted out.
 */
final class Joints {
  static final String BULKHEAD = "bulkhead";
  static final String UNION = "union";

  private Joints() {}

  /** Bulkhead fittings that a line needs besides those that it names. */
  static int bulkheads(Line line, Project project) {
    if (!line.has(Run.class)) {
      return 0;
    }
    Point from = project.network().point(line.from());
    Point to = project.network().point(line.to());
    boolean leavesOpenly =
        from instanceof Basin && !isPump(line.parts().get(0)) && !line.has(Skimmer.class);
    int needed = from instanceof Chamber || leavesOpenly ? 1 : 0;
    if (to instanceof Chamber || project.streams().boxes().containsKey(to.name())) {
      needed++;
    }
    return needed - Math.min(needed, named(line, BULKHEAD));
  }

  /** Unions that a line needs besides those that it names. */
  static int unions(Line line) {
    if (!line.has(Run.class)) {
      return 0;
    }
    int needed = 0;
    List<Part> parts = line.parts();
    for (int i = 0; i < parts.size(); i++) {
      boolean pipeBefore = parts.subList(0, i).stream().anyMatch(Run.class::isInstance);
      if (isPump(parts.get(i)) || parts.get(i) instanceof Filter) {
        needed += pipeBefore ? 2 : 1;
      } else if (parts.get(i) instanceof CheckValve) {
        needed++;
      }
    }
    return needed - Math.min(needed, named(line, UNION));
  }

  private static int named(Line line, String type) {
    return line.placed(Fitting.class).stream()
        .filter(fitting -> fitting.part().label().equals(type))
        .mapToInt(fitting -> fitting.part().count())
        .sum();
  }

  private static boolean isPump(Part part) {
    return part instanceof Pump || part instanceof PlannedPump;
  }
}
