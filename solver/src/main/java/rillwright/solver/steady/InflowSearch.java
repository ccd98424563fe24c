package rillwright.solver.steady;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.network.topology.UnmetDraw;

/**
 * Finds what comes into starved chambers, which is what is drawn from them, and what falls out of
 * vented lines, which is what comes to the points below: at once unless some of it comes back.
 */
final class InflowSearch {
  /** Error of an inflow that ends the search: a share of the largest flow, or m³/s if larger. */
  private static final double RELATIVE_TOLERANCE = 1e-12;

  private static final double TOLERANCE_M3_PER_S = 1e-15;

  private static final int MOST_ROUNDS = 200;

  private final NetworkGraph graph;
  private final Model model;
  private final Map<LineName, Double> falling;
  private Model.Near near;
  private int iterations;

  /**
   * A search.
   *
   * @param falling what falls out of vented lines at first, m³/s; copied
   * @param near flows near which its first balance is
   */
  InflowSearch(NetworkGraph graph, Model model, Map<LineName, Double> falling, Model.Near near) {
    this.near = near;
    this.graph = graph;
    this.model = model;
    this.falling = new LinkedHashMap<>(falling);
  }

  /** Newton steps taken so far. */
  int iterations() {
    return iterations;
  }

  /**
   * The balance with these chambers starved; their inflows are brought up to date in the map.
   *
   * @throws NoBalance if draws cannot be met by what comes in
   * @throws SearchFailed if the search does not end
   */
  Solved settle(Map<PointName, Starved> starved) {
    Map<Object, Recycle> recycles = new HashMap<>();
    starved.keySet().forEach(chamber -> recycles.put(chamber, new Recycle()));
    falling.keySet().forEach(line -> recycles.put(line, new Recycle()));
    Solved solved = balance(starved);
    double error = error(starved, solved);
    for (int round = 0; error > tolerance(solved); round++) {
      if (round == MOST_ROUNDS) {
        throw new SearchFailed(iterations, error, 0);
      }
      boolean plainly = round < recycles.size();
      Map<PointName, Starved> plain = new LinkedHashMap<>();
      Map<PointName, Starved> ahead = new LinkedHashMap<>();
      for (Map.Entry<PointName, Starved> entry : starved.entrySet()) {
        PointName name = entry.getKey();
        Starved chamber = entry.getValue();
        double came = inflow(name, solved);
        double next = plainly ? came : recycles.get(name).next(chamber.inflowM3PerS(), came);
        plain.put(name, chamber.withInflow(came));
        ahead.put(name, chamber.withInflow(next));
      }
      Map<LineName, Double> fell = new LinkedHashMap<>();
      Map<LineName, Double> falls = new LinkedHashMap<>();
      for (Map.Entry<LineName, Double> entry : falling.entrySet()) {
        LineName name = entry.getKey();
        double came = Math.abs(solved.flowM3PerS(name));
        fell.put(name, came);
        falls.put(name, plainly ? came : recycles.get(name).next(entry.getValue(), came));
      }
      if (model.unmetDraws(ahead, falls).isEmpty()) {
        starved.putAll(ahead);
        falling.putAll(falls);
        solved = balanced(starved);
      } else {
        ahead.forEach((name, chamber) -> recycles.get(name).refuse(chamber.inflowM3PerS()));
        falls.forEach((name, flow) -> recycles.get(name).refuse(flow));
        starved.putAll(plain);
        falling.putAll(fell);
        solved = balance(starved);
      }
      error = error(starved, solved);
    }
    return solved;
  }

  private Solved balance(Map<PointName, Starved> starved) {
    List<UnmetDraw> unmet = model.unmetDraws(starved, falling);
    if (!unmet.isEmpty()) {
      throw new NoBalance(new NoBalance.UnmetDraws(unmet));
    }
    return balanced(starved);
  }

  private Solved balanced(Map<PointName, Starved> starved) {
    Solved solved = model.balance(starved, falling, near);
    near = solved.near();
    iterations += solved.balance().iterations();
    return solved;
  }

  private static double tolerance(Solved solved) {
    return Math.max(TOLERANCE_M3_PER_S, RELATIVE_TOLERANCE * solved.largestFlowM3PerS());
  }

  private double error(Map<PointName, Starved> starved, Solved solved) {
    double largest = 0;
    for (Map.Entry<PointName, Starved> entry : starved.entrySet()) {
      double error = inflow(entry.getKey(), solved) - entry.getValue().inflowM3PerS();
      largest = Math.max(largest, Math.abs(error));
    }
    for (Map.Entry<LineName, Double> entry : falling.entrySet()) {
      double error = Math.abs(solved.flowM3PerS(entry.getKey())) - entry.getValue();
      largest = Math.max(largest, Math.abs(error));
    }
    return largest;
  }

  /** What comes into a chamber out of full lines, m³/s. */
  double inflow(PointName chamber, Solved solved) {
    double sum = 0;
    for (Line line : graph.linesAt(chamber)) {
      sum += solved.inflowM3PerS(line, chamber);
    }
    return sum;
  }
}
