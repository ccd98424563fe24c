package rillwright.solver.stream.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;

/**
 * Basins and the chambers downstream of their skimmers. With the pumps off they come level within
 * seconds and then rise and fall as one water: followed one by one they would quarrel about
 * hundredths of a millimetre for hours.
 */
final class LevelWaters {
  /** Within this difference they are level, m. */
  private static final double LEVEL_M = 1e-4;

  private final List<Pair> pairs = new ArrayList<>();

  private record Pair(int basin, int chamber) {}

  /**
   * The pairs of a network.
   *
   * @param stores of its points
   */
  LevelWaters(Network network, Map<PointName, Integer> stores) {
    for (Line line : network.lines()) {
      boolean pair =
          network.point(line.from()) instanceof Basin
              && network.point(line.to()) instanceof Chamber
              && stores.containsKey(line.to());
      if (pair) {
        pairs.add(new Pair(stores.get(line.from()), stores.get(line.to())));
      }
    }
  }

  /**
   * Gives a level pair one rate between them.
   *
   * @param net what each store gains, m³/s, shared anew
   * @param areaM2 of each store's water surface
   */
  void share(double[] levels, double[] net, double[] areaM2) {
    for (Pair pair : pairs) {
      if (Math.abs(levels[pair.basin()] - levels[pair.chamber()]) < LEVEL_M) {
        double both = net[pair.basin()] + net[pair.chamber()];
        double area = areaM2[pair.basin()] + areaM2[pair.chamber()];
        net[pair.basin()] = both * areaM2[pair.basin()] / area;
        net[pair.chamber()] = both * areaM2[pair.chamber()] / area;
      }
    }
  }
}
