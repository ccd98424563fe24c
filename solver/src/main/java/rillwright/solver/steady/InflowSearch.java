package rillwright.solver.steady;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.solver.balance.NotBalanced;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.UnmetDraw;

/**
 * Finds what comes into starved chambers, which is what is drawn from them. At once unless some of
 * what is drawn comes back: then more drawn is more coming in, by less than what more was drawn,
 * and the answer is searched by secants, each chamber for itself.
 *
 * <p>Source: Wegstein, J. H. (1958), "Accelerating convergence of iterative processes",
 * Communications of the ACM 1(6), 9–13 (from memory).
 */
final class InflowSearch {
  /** Change of an inflow, as a share of the largest flow, that ends the search. */
  private static final double TOLERANCE = 1e-12;

  private static final int MOST_ROUNDS = 200;

  /** The most of what is drawn in addition that is taken to come back. */
  private static final double MOST_COMES_BACK = 1 - 1e-9;

  private final Network network;
  private final Model model;
  private int iterations;

  InflowSearch(Network network, Model model) {
    this.network = network;
    this.model = model;
  }

  /** Newton steps taken so far. */
  int iterations() {
    return iterations;
  }

  /**
   * The balance with these chambers starved; their inflows are brought up to date in the map.
   *
   * @throws NoBalance if draws cannot be met by what comes in
   * @throws NotBalanced if the search does not end
   */
  Solved settle(Map<PointName, Starved> starved) {
    Map<PointName, Double> drawnBefore = new HashMap<>();
    Map<PointName, Double> cameBefore = new HashMap<>();
    Solved solved = balance(starved);
    double change = change(starved, solved);
    for (int round = 0; change > TOLERANCE * solved.largestFlowM3PerS(); round++) {
      if (round == MOST_ROUNDS) {
        throw new NotBalanced(iterations, change, 0);
      }
      Map<PointName, Starved> plain = new LinkedHashMap<>();
      Map<PointName, Starved> ahead = new LinkedHashMap<>();
      for (Map.Entry<PointName, Starved> entry : starved.entrySet()) {
        PointName chamber = entry.getKey();
        double drawn = entry.getValue().inflowM3PerS();
        double comes = inflow(chamber, solved);
        double moreDrawn = drawn - drawnBefore.getOrDefault(chamber, drawn);
        double moreComes = comes - cameBefore.getOrDefault(chamber, comes);
        double back =
            moreDrawn == 0 ? 0 : Math.min(MOST_COMES_BACK, Math.max(0, moreComes / moreDrawn));
        double next = Math.max(0, drawn + (comes - drawn) / (1 - back));
        drawnBefore.put(chamber, drawn);
        cameBefore.put(chamber, comes);
        plain.put(chamber, entry.getValue().withInflow(comes));
        ahead.put(chamber, entry.getValue().withInflow(next));
      }
      starved.putAll(model.unmetDraws(ahead).isEmpty() ? ahead : plain);
      solved = balance(starved);
      change = change(starved, solved);
    }
    return solved;
  }

  private Solved balance(Map<PointName, Starved> starved) {
    List<UnmetDraw> unmet = model.unmetDraws(starved);
    if (!unmet.isEmpty()) {
      throw new NoBalance(new NoBalance.UnmetDraws(unmet));
    }
    Solved solved = model.balance(starved);
    iterations += solved.balance().iterations();
    return solved;
  }

  private double change(Map<PointName, Starved> starved, Solved solved) {
    double largest = 0;
    for (Map.Entry<PointName, Starved> entry : starved.entrySet()) {
      double change = inflow(entry.getKey(), solved) - entry.getValue().inflowM3PerS();
      largest = Math.max(largest, Math.abs(change));
    }
    return largest;
  }

  /** What comes into a chamber, m³/s. */
  double inflow(PointName chamber, Solved solved) {
    double sum = 0;
    for (Line line : network.lines()) {
      if (line.from().equals(chamber) || line.to().equals(chamber)) {
        sum += solved.inflowM3PerS(line, chamber);
      }
    }
    return sum;
  }
}
