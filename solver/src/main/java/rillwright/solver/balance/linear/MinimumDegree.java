package rillwright.solver.balance.linear;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * Elimination order that keeps a sparse Cholesky factor sparse: at each step the node with the
 * fewest neighbours left.
 *
 * <p>Source: Tinney, W. F. and Walker, J. W. (1967), "Direct solutions of sparse network equations
 * by optimally ordered triangular factorization", Proc. IEEE 55(11), 1801–1809, scheme 2 (from
 * memory). EJML has no ordering of its own.
 */
final class MinimumDegree {
  private static final int[] NONE = {};

  private MinimumDegree() {}

  /**
   * The order of elimination: {@code order[k]} is the node eliminated as the k-th, length {@code
   * nodeCount}.
   *
   * @param edges pairs of different nodes that share an entry of the matrix; length 2 × the number
   *     of edges
   */
  static int[] order(int nodeCount, int[] edges) {
    int[][] neighbours = neighbours(nodeCount, edges);
    PriorityQueue<Long> waiting = new PriorityQueue<>();
    for (int i = 0; i < nodeCount; i++) {
      waiting.add(candidate(neighbours[i].length, i));
    }
    boolean[] eliminated = new boolean[nodeCount];
    int[] order = new int[nodeCount];
    int length = 0;
    while (length < nodeCount) {
      long candidate = waiting.remove();
      int node = (int) candidate;
      if (eliminated[node] || candidate != candidate(neighbours[node].length, node)) {
        continue;
      }
      eliminated[node] = true;
      order[length++] = node;
      int[] around = neighbours[node];
      for (int one : around) {
        int before = neighbours[one].length;
        neighbours[one] = joined(neighbours[one], around, node, one);
        if (neighbours[one].length != before) {
          waiting.add(candidate(neighbours[one].length, one));
        }
      }
      neighbours[node] = NONE;
    }
    return order;
  }

  /** Those with fewer neighbours come first, of as many the first node. */
  private static long candidate(int degree, int node) {
    return ((long) degree << Integer.SIZE) | node;
  }

  /** The neighbours of each node, in order, each once. */
  private static int[][] neighbours(int nodeCount, int[] edges) {
    int[] count = new int[nodeCount];
    for (int node : edges) {
      count[node]++;
    }
    int[][] neighbours = new int[nodeCount][];
    Arrays.setAll(neighbours, i -> new int[count[i]]);
    for (int e = 0; e < edges.length; e += 2) {
      neighbours[edges[e]][--count[edges[e]]] = edges[e + 1];
      neighbours[edges[e + 1]][--count[edges[e + 1]]] = edges[e];
    }
    for (int i = 0; i < nodeCount; i++) {
      Arrays.sort(neighbours[i]);
      neighbours[i] = joined(neighbours[i], NONE, i, i);
    }
    return neighbours;
  }

  /** What is in either of two lists in order, each once, without two nodes. */
  private static int[] joined(int[] one, int[] other, int without, int itself) {
    int[] joined = new int[one.length + other.length];
    int length = 0;
    for (int i = 0, j = 0; i < one.length || j < other.length; ) {
      boolean first = j == other.length || (i < one.length && one[i] <= other[j]);
      int next = first ? one[i++] : other[j++];
      boolean again = length > 0 && joined[length - 1] == next;
      if (!again && next != without && next != itself) {
        joined[length++] = next;
      }
    }
    return Arrays.copyOf(joined, length);
  }
}
