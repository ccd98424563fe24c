package rillwright.cli.study;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.PumpPlace;

/** Where a pump's water comes from. */
public final class PumpSource {
  private PumpSource() {}

  /** The basin that feeds a pump, by chambers and tees; empty if there is none or several. */
  public static Optional<Basin> of(Network network, PumpPlace place) {
    Set<PointName> met = new LinkedHashSet<>();
    Deque<PointName> upstream = new ArrayDeque<>();
    upstream.add(network.line(place.line()).from());
    List<Basin> basins = new ArrayList<>();
    while (!upstream.isEmpty()) {
      PointName name = upstream.remove();
      if (!met.add(name)) {
        continue;
      }
      if (network.point(name) instanceof Basin basin) {
        basins.add(basin);
        continue;
      }
      for (Line line : network.lines()) {
        if (line.to().equals(name)) {
          upstream.add(line.from());
        }
      }
    }
    return basins.size() == 1 ? Optional.of(basins.get(0)) : Optional.empty();
  }
}
