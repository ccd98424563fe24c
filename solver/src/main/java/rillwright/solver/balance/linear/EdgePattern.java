package rillwright.solver.balance.linear;

import java.util.Arrays;
import org.ejml.data.DMatrixSparseCSC;

/**
 * Which nodes edges join, with the order in which they are eliminated and the pattern of the
 * matrix: found once for all systems of the same edges. Several threads may use it at a time.
 */
public final class EdgePattern {
  private final int size;
  private final int[] from;
  private final int[] to;

  /** Where node i stands in the permuted matrix; length size. */
  final int[] place;

  /** Where in the matrix's values the diagonal of node i is; length size. */
  final int[] diagonalSlot;

  /** Where the entry of edge e is; length number of edges; −1 for an edge from a node to itself. */
  final int[] edgeSlot;

  private final DMatrixSparseCSC pattern;

  /**
   * The pattern of some edges.
   *
   * @param size number of nodes
   * @param from first node of each edge; length number of edges; copied
   * @param to second node of each edge; the same length; copied
   */
  public EdgePattern(int size, int[] from, int[] to) {
    this.size = size;
    this.from = from.clone();
    this.to = to.clone();
    this.place = new int[size];
    int[] order = MinimumDegree.order(size, pairs(from, to));
    for (int k = 0; k < size; k++) {
      place[order[k]] = k;
    }
    this.diagonalSlot = new int[size];
    this.edgeSlot = new int[from.length];
    this.pattern = pattern(from, to);
  }

  /** Whether it is that of some edges. */
  public boolean isOf(int nodes, int[] first, int[] second) {
    return size == nodes && Arrays.equals(from, first) && Arrays.equals(to, second);
  }

  /** Number of nodes. */
  int size() {
    return size;
  }

  /** A matrix of the pattern, all of whose numbers are 0. */
  DMatrixSparseCSC matrix() {
    return pattern.copy();
  }

  private static int[] pairs(int[] from, int[] to) {
    int[] pairs = new int[2 * from.length];
    int length = 0;
    for (int e = 0; e < from.length; e++) {
      if (from[e] != to[e]) {
        pairs[length++] = from[e];
        pairs[length++] = to[e];
      }
    }
    return Arrays.copyOf(pairs, length);
  }

  /** Upper triangle, column by column; parallel edges share an entry. */
  private DMatrixSparseCSC pattern(int[] from, int[] to) {
    long[] entries = new long[size + from.length];
    int count = 0;
    for (int i = 0; i < size; i++) {
      entries[count++] = entry(place[i], place[i]);
    }
    for (int e = 0; e < from.length; e++) {
      if (from[e] != to[e]) {
        entries[count++] = entry(place[from[e]], place[to[e]]);
      }
    }
    entries = Arrays.stream(entries, 0, count).sorted().distinct().toArray();
    DMatrixSparseCSC pattern = new DMatrixSparseCSC(size, size, entries.length);
    pattern.nz_length = entries.length;
    for (int slot = 0; slot < entries.length; slot++) {
      pattern.nz_rows[slot] = (int) (entries[slot] % size);
      pattern.col_idx[(int) (entries[slot] / size) + 1] = slot + 1;
    }
    for (int i = 0; i < size; i++) {
      diagonalSlot[i] = Arrays.binarySearch(entries, entry(place[i], place[i]));
    }
    for (int e = 0; e < from.length; e++) {
      edgeSlot[e] =
          from[e] == to[e] ? -1 : Arrays.binarySearch(entries, entry(place[from[e]], place[to[e]]));
    }
    return pattern;
  }

  private long entry(int one, int other) {
    return (long) Math.max(one, other) * size + Math.min(one, other);
  }
}
