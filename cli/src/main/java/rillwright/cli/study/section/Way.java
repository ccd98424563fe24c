package rillwright.cli.study.section;

import java.util.List;
import java.util.Optional;
import rillwright.solver.network.PointName;

/**
 * A way of the water: from open water or a branch over lines to where it leaves them, and home.
 *
 * @param from where it begins
 * @param to where it leaves the lines, or comes to open water or to an earlier way
 * @param home the open water that it runs back to, if any
 * @param stations in the order the water meets them; copied
 */
public record Way(PointName from, PointName to, Optional<PointName> home, List<Station> stations) {
  public Way {
    stations = List.copyOf(stations);
  }
}
