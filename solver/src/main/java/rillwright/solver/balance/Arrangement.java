package rillwright.solver.balance;

import java.util.Arrays;
import java.util.List;
import rillwright.solver.balance.linear.EdgePattern;
import rillwright.solver.balance.linear.NodalSystem;
import rillwright.solver.law.HeadLaw;

/** A {@link BalanceProblem} in arrays. */
final class Arrangement {
  final int nodeCount;
  final int linkCount;

  /** First and second node of each link. */
  final int[] from;

  final int[] to;

  /** Law of each link, and the flows that it allows. */
  final HeadLaw[] law;

  final double[] least;
  final double[] greatest;

  /** Flow near which each link's search begins; NaN where none is known. */
  final double[] near;

  /** Whether each node's head is held, and at what. */
  final boolean[] held;

  final double[] heldHead;

  /** Flow taken out at each node. */
  final double[] draw;

  /** The links that lead from each node to others, in their order. */
  final int[][] linksAt;

  final EdgePattern edges;
  final NodalSystem system;

  Arrangement(BalanceProblem problem) {
    List<BalanceProblem.Node> nodes = problem.nodes();
    List<BalanceProblem.Link> links = problem.links();
    nodeCount = nodes.size();
    linkCount = links.size();
    from = new int[linkCount];
    to = new int[linkCount];
    law = new HeadLaw[linkCount];
    least = new double[linkCount];
    greatest = new double[linkCount];
    near = new double[linkCount];
    for (int k = 0; k < linkCount; k++) {
      BalanceProblem.Link link = links.get(k);
      from[k] = link.from();
      to[k] = link.to();
      law[k] = link.law();
      least[k] = link.law().leastFlow();
      greatest[k] = link.law().greatestFlow();
      near[k] = link.nearM3PerS().orElse(Double.NaN);
    }
    held = new boolean[nodeCount];
    heldHead = new double[nodeCount];
    draw = new double[nodeCount];
    for (int i = 0; i < nodeCount; i++) {
      BalanceProblem.Node node = nodes.get(i);
      held[i] = node.heldHeadM().isPresent();
      heldHead[i] = node.heldHeadM().orElse(0);
      draw[i] = held[i] ? 0 : node.drawM3PerS();
    }
    linksAt = incidence();
    edges =
        problem
            .like()
            .filter(known -> known.isOf(nodeCount, from, to))
            .orElseGet(() -> new EdgePattern(nodeCount, from, to));
    system = new NodalSystem(edges);
  }

  private int[][] incidence() {
    int[] count = new int[nodeCount];
    for (int k = 0; k < linkCount; k++) {
      if (from[k] != to[k]) {
        count[from[k]]++;
        count[to[k]]++;
      }
    }
    int[][] links = new int[nodeCount][];
    Arrays.setAll(links, i -> new int[count[i]]);
    Arrays.fill(count, 0);
    for (int k = 0; k < linkCount; k++) {
      if (from[k] != to[k]) {
        links[from[k]][count[from[k]]++] = k;
        links[to[k]][count[to[k]]++] = k;
      }
    }
    return links;
  }
}
