package rillwright.solver.balance;

import java.util.List;
import rillwright.solver.balance.BalanceProblem.Link;
import rillwright.solver.balance.linear.NodalSystem;

/**
 * How the flows of a balance follow a small change of a law, by the matrix of Newton's method where
 * it ended: factored once, solved anew for each link.
 *
 * <p>If a link takes δh more, its flow is −(c − c² r) δh, c being 1 by its slope and r the head
 * between its ends for a flow of 1 put in at one of them and taken out at the other. A link that is
 * shut or at a bound carries what it carries.
 */
public final class Slopes {
  private final List<Link> links;
  private final double[] conductance;

  /** Whether each node's head stays as it is. */
  private final boolean[] anchored;

  private final NodalSystem system;
  private final double[] head;

  /** The slopes of a balance of a problem. */
  public Slopes(BalanceProblem problem, Balance balance) {
    this.links = problem.links();
    int nodes = problem.nodes().size();
    this.conductance = new double[links.size()];
    this.anchored = new boolean[nodes];
    this.head = new double[nodes];
    for (int k = 0; k < links.size(); k++) {
      Link link = links.get(k);
      double flow = balance.flowM3PerS(k);
      boolean isFree =
          !balance.isShut(k) && flow > link.law().leastFlow() && flow < link.law().greatestFlow();
      conductance[k] = isFree ? 1 / ExtendedLaw.bounded(link.law().slopeAt(flow)) : 0;
    }
    this.system = new NodalSystem(balance.edges());
    anchor(problem);
    factor();
  }

  /** Held nodes, and one of each part that has none. */
  private void anchor(BalanceProblem problem) {
    int[] part = new int[anchored.length];
    for (int i = 0; i < part.length; i++) {
      part[i] = i;
    }
    for (int k = 0; k < links.size(); k++) {
      if (conductance[k] > 0) {
        part[root(part, links.get(k).from())] = root(part, links.get(k).to());
      }
    }
    boolean[] hasOne = new boolean[part.length];
    for (int i = 0; i < part.length; i++) {
      anchored[i] = problem.nodes().get(i).heldHeadM().isPresent();
      hasOne[root(part, i)] |= anchored[i];
    }
    for (int i = 0; i < part.length; i++) {
      anchored[i] |= root(part, i) == i && !hasOne[i];
    }
  }

  private static int root(int[] part, int node) {
    int root = node;
    while (part[root] != root) {
      part[root] = part[part[root]];
      root = part[root];
    }
    return root;
  }

  private void factor() {
    system.clear();
    for (int i = 0; i < anchored.length; i++) {
      if (anchored[i]) {
        system.addToDiagonal(i, 1);
      }
    }
    for (int k = 0; k < links.size(); k++) {
      int i = links.get(k).from();
      int j = links.get(k).to();
      if (conductance[k] > 0 && i != j) {
        system.couple(k, i, j, conductance[k], anchored);
      }
    }
    if (!system.solve(head)) {
      throw new SearchFailed(0, 0, 0);
    }
  }

  /**
   * By how much less flows through a link, without sign, for each metre that it takes more, m²/s.
   */
  public double flowByHead(int link) {
    double own = conductance[link];
    if (own == 0) {
      return 0;
    }
    int i = links.get(link).from();
    int j = links.get(link).to();
    system.clearRightHandSide();
    system.addToRightHandSide(i, anchored[i] ? 0 : 1);
    system.addToRightHandSide(j, anchored[j] ? 0 : -1);
    system.solveAgain(head);
    return Math.max(0, own - own * own * (head[i] - head[j]));
  }
}
