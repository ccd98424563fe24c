package rillwright.cli.study;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;

/** The basins that a chamber is fed from. */
public final class Feeders {
  private Feeders() {}

  /** Each of them once, in the order of the lines that lead from them. */
  public static List<Basin> listBasins(Network network, Chamber chamber) {
    List<Basin> basins = new ArrayList<>();
    for (Line line : network.lines()) {
      boolean leadsThere = line.to().equals(chamber.name());
      if (leadsThere
          && network.point(line.from()) instanceof Basin basin
          && !basins.contains(basin)) {
        basins.add(basin);
      }
    }
    return basins;
  }
}
