package rillwright.solver.stream;

import java.util.stream.DoubleStream;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Network;
import rillwright.solver.network.Skimmer;

/** Room that water keeps below what it must not reach; common practice, no source. */
public final class Freeboard {
  private static final double INCH = 0.0254;

  /** Between the water at rest and the ground, m. */
  public static final double BELOW_GRADE_M = 3 * INCH;

  /** The same as it is said, m: 3 in or 75 mm. */
  static final double SAID_BELOW_GRADE_M = 0.075;

  /** Between the water at rest and the top of a skimmer's mouth, m. */
  public static final double BELOW_MOUTH_TOP_M = INCH;

  /** Between an overflow and the ground or the liner's edge, m. */
  public static final double OVERFLOW_BELOW_EDGE_M = INCH;

  private Freeboard() {}

  /** The highest level at rest of a basin that keeps all of it, m; infinite if nothing is known. */
  public static double highestRestM(Basin basin, Network network) {
    DoubleStream mouths =
        network.skimmersOf(basin.name()).stream()
            .map(Skimmer::mouthTopM)
            .flatMapToDouble(top -> top.stream())
            .map(top -> top - BELOW_MOUTH_TOP_M);
    DoubleStream marks =
        DoubleStream.of(
            basin.gradeM().orElse(Double.POSITIVE_INFINITY) - BELOW_GRADE_M,
            basin.overflowM().orElse(Double.POSITIVE_INFINITY),
            basin.linerEdgeM().orElse(Double.POSITIVE_INFINITY));
    return DoubleStream.concat(mouths, marks).min().orElseThrow();
  }

  /** The highest overflow of a basin, m; infinite if neither ground nor liner's edge is known. */
  public static double highestOverflowM(Basin basin) {
    return edgeM(basin) - OVERFLOW_BELOW_EDGE_M;
  }

  /** The lower of a basin's ground and its liner's edge, m; infinite if neither is known. */
  static double edgeM(Basin basin) {
    return Math.min(
        basin.linerEdgeM().orElse(Double.POSITIVE_INFINITY),
        basin.gradeM().orElse(Double.POSITIVE_INFINITY));
  }
}
