package rillwright.solver.balance.linear;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Elimination order that keeps a sparse Cholesky factor sparse: at each step the node with the
 * fewest neighbours left.
 *
 * <p>Source: Tinney, W. F. and Walker, J. W. (1967), "Direct solutions of sparse network equations
 * by optimally ordered triangular factorization", Proc. IEEE 55(11), 1801–1809, scheme 2 (from
 * memory). EJML has no ordering of its own; for the networks of ponds, tens of nodes, the plain
 * form costs microseconds.
 */
final class MinimumDegree {
  private MinimumDegree() {}

  /**
   * The order of elimination: {@code order[k]} is the node eliminated as the k-th, length {@code
   * nodeCount}.
   *
   * @param edges pairs of different nodes that share an entry of the matrix; length 2 × the number
   *     of edges
   */
  static int[] order(int nodeCount, int[] edges) {
    List<TreeSet<Integer>> neighbours = new ArrayList<>();
    for (int i = 0; i < nodeCount; i++) {
      neighbours.add(new TreeSet<>());
    }
    for (int e = 0; e < edges.length; e += 2) {
      neighbours.get(edges[e]).add(edges[e + 1]);
      neighbours.get(edges[e + 1]).add(edges[e]);
    }
    record Candidate(int degree, int node) implements Comparable<Candidate> {
      @Override
      public int compareTo(Candidate other) {
        return degree != other.degree
            ? Integer.compare(degree, other.degree)
            : Integer.compare(node, other.node);
      }
    }
    TreeSet<Candidate> waiting = new TreeSet<>();
    for (int i = 0; i < nodeCount; i++) {
      waiting.add(new Candidate(neighbours.get(i).size(), i));
    }
    int[] order = new int[nodeCount];
    for (int k = 0; k < nodeCount; k++) {
      int node = waiting.pollFirst().node();
      order[k] = node;
      TreeSet<Integer> around = neighbours.get(node);
      for (int one : around) {
        TreeSet<Integer> ofOne = neighbours.get(one);
        waiting.remove(new Candidate(ofOne.size(), one));
        ofOne.remove(node);
        for (int other : around) {
          if (other != one) {
            ofOne.add(other);
          }
        }
        waiting.add(new Candidate(ofOne.size(), one));
      }
    }
    return order;
  }
}
