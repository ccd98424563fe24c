package rillwright.solver.steady;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.balance.Balance;
import rillwright.solver.balance.BalanceProblem;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;

/**
 * A balance with the numbers of its points, lines and spills.
 *
 * @param nodeOf the node from which water is drawn at each point
 * @param linksOf the links of each line; two where one is for each direction
 * @param spillOf the link of each way out of the network
 * @param surplusOf the link of each starved chamber that takes what comes in and is not drawn
 */
record Solved(
    BalanceProblem problem,
    Balance balance,
    Map<PointName, Integer> nodeOf,
    Map<LineName, List<Integer>> linksOf,
    Map<PointName, Integer> spillOf,
    Map<PointName, Integer> surplusOf) {

  /** Head at a point, m; of a starved chamber the level that is drawn from. */
  OptionalDouble headM(PointName point) {
    return balance.headM(nodeOf.get(point));
  }

  /** Flow along a line that has a law, m³/s. */
  double flowM3PerS(LineName line) {
    double sum = 0;
    for (int link : linksOf.get(line)) {
      sum += balance.flowM3PerS(link);
    }
    return sum;
  }

  /** Its flows, for a balance that is like it. */
  Model.Near near() {
    return new Model.Near(
        line -> OptionalDouble.of(flowM3PerS(line)),
        point ->
            spillOf.containsKey(point)
                ? OptionalDouble.of(balance.flowM3PerS(spillOf.get(point)))
                : OptionalDouble.empty(),
        Optional.of(balance.edges()));
  }

  /** Flow that a line brings to one of its ends, m³/s; 0 where it takes water away. */
  double inflowM3PerS(Line line, PointName end) {
    double flow = flowM3PerS(line.name());
    return Math.max(0, line.to().equals(end) ? flow : -flow);
  }

  /** Largest flow in any line, m³/s. */
  double largestFlowM3PerS() {
    return linksOf.keySet().stream()
        .mapToDouble(line -> Math.abs(flowM3PerS(line)))
        .max()
        .orElse(0);
  }

  /** What comes into a starved chamber and is not drawn from it, m³/s: it is not starved then. */
  double surplusM3PerS(PointName chamber) {
    return balance.flowM3PerS(surplusOf.get(chamber));
  }
}
