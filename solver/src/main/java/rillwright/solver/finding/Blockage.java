package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;

/**
 * What stands in the water's way altogether: shut valves, filters and mouths clogged to the full.
 */
final class Blockage {
  private Blockage() {}

  /** The parts of a line, pumps aside, that let nothing through. */
  static List<Part> listIn(Network network, Line line) {
    List<Part> blocked = new ArrayList<>();
    for (Part part : line.parts()) {
      HeadLaw law = part.law(network.settingOf(line));
      if (!(part instanceof Pump) && law.greatestFlow() <= 0 && law.leastFlow() >= 0) {
        blocked.add(part);
      }
    }
    return blocked;
  }

  /**
   * Whether water that is pushed along a line can leave the network somewhere: at a basin, fall or
   * outlet that no blocked line cuts off.
   */
  static boolean leavesAWayOut(Network network, Line pushed) {
    if (!listIn(network, pushed).isEmpty()) {
      return false;
    }
    Set<PointName> reached = new HashSet<>();
    List<PointName> ahead = new ArrayList<>(List.of(pushed.to()));
    while (!ahead.isEmpty()) {
      PointName name = ahead.remove(ahead.size() - 1);
      Point point = network.point(name);
      if (point.heldHeadM().isPresent() || point.spill().isPresent()) {
        return true;
      }
      if (reached.add(name)) {
        for (Line line : network.lines()) {
          if (!line.name().equals(pushed.name()) && listIn(network, line).isEmpty()) {
            if (line.from().equals(name)) {
              ahead.add(line.to());
            } else if (line.to().equals(name)) {
              ahead.add(line.from());
            }
          }
        }
      }
    }
    return false;
  }
}
