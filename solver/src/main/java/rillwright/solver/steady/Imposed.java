package rillwright.solver.steady;

import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/**
 * Flows imposed on a network in place of its laws.
 *
 * @param lineFlowM3PerS flow through lines whose own law does not count, m³/s; copied
 * @param outflowM3PerS flow out of points whose own way out, over a spill or into water at their
 *     level, does not count, m³/s; copied
 */
public record Imposed(Map<LineName, Double> lineFlowM3PerS, Map<PointName, Double> outflowM3PerS) {
  /** Nothing imposed. */
  public static final Imposed NOTHING = new Imposed(Map.of(), Map.of());

  public Imposed {
    lineFlowM3PerS = Map.copyOf(lineFlowM3PerS);
    outflowM3PerS = Map.copyOf(outflowM3PerS);
  }

  /** The head at which a point is held, m; empty where a flow out of it is imposed instead. */
  OptionalDouble heldHeadM(Point point) {
    return outflowM3PerS.containsKey(point.name()) ? OptionalDouble.empty() : point.heldHeadM();
  }

  /** One line's flow imposed. */
  public static Imposed flow(LineName line, double flowM3PerS) {
    return new Imposed(Map.of(line, flowM3PerS), Map.of());
  }
}
