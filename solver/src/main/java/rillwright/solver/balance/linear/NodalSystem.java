package rillwright.solver.balance.linear;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.ejml.sparse.csc.linsol.chol.LinearSolverCholesky_DSCC;

/**
 * The nodal matrix Σ (eᵢ − eⱼ)(eᵢ − eⱼ)ᵀ/D of a fixed pattern of links, A H = b, by sparse
 * Cholesky.
 *
 * <p>The elimination order and the pattern of the factor are found once; each step overwrites the
 * numbers.
 */
public final class NodalSystem {
  private final int size;

  /** Where node i stands in the permuted matrix; length size. */
  private final int[] place;

  /** Where in the matrix's values the diagonal of node i is; length size. */
  private final int[] diagonalSlot;

  /** Where the entry of edge e is; length number of edges; −1 for an edge from a node to itself. */
  private final int[] edgeSlot;

  private final DMatrixSparseCSC matrix;
  private final DMatrixRMaj rightHandSide;
  private final DMatrixRMaj solution;
  private final LinearSolverCholesky_DSCC solver;

  /**
   * The system of a pattern.
   *
   * @param size number of unknown heads
   * @param from first node of each edge; length number of edges
   * @param to second node of each edge; the same length
   */
  public NodalSystem(int size, int[] from, int[] to) {
    this.size = size;
    this.place = new int[size];
    int[] order = MinimumDegree.order(size, pairs(from, to));
    for (int k = 0; k < size; k++) {
      place[order[k]] = k;
    }
    this.diagonalSlot = new int[size];
    this.edgeSlot = new int[from.length];
    this.matrix = pattern(from, to);
    this.rightHandSide = new DMatrixRMaj(size, 1);
    this.solution = new DMatrixRMaj(size, 1);
    this.solver = new LinearSolverCholesky_DSCC(new CholeskyUpLooking_DSCC(), null);
    this.solver.setStructureLocked(true);
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

  /** Sets every number to 0. */
  public void clear() {
    Arrays.fill(matrix.nz_values, 0, matrix.nz_length, 0);
    clearRightHandSide();
  }

  /** Adds to the diagonal of a node. */
  public void addToDiagonal(int node, double value) {
    matrix.nz_values[diagonalSlot[node]] += value;
  }

  /**
   * Adds what an edge between two nodes conducts.
   *
   * @param anchored whether each node's head stays as it is, so that its row is left alone
   */
  public void couple(int edge, int from, int to, double conductance, boolean[] anchored) {
    if (!anchored[from]) {
      addToDiagonal(from, conductance);
    }
    if (!anchored[to]) {
      addToDiagonal(to, conductance);
    }
    if (!anchored[from] && !anchored[to]) {
      matrix.nz_values[edgeSlot[edge]] -= conductance;
    }
  }

  /** Adds to the right-hand side of a node. */
  public void addToRightHandSide(int node, double value) {
    rightHandSide.data[place[node]] += value;
  }

  /**
   * Solves the system; false if the matrix is not positive definite or the answer not finite.
   *
   * @param heads where the answer is written, indexed by node; length at least size
   */
  public boolean solve(double[] heads) {
    if (size == 0) {
      return true;
    }
    return solver.setA(matrix) && solveAgain(heads);
  }

  /** Sets the right-hand side to 0. */
  public void clearRightHandSide() {
    rightHandSide.zero();
  }

  /** Solves for another right-hand side with the matrix of the last solution; else the same. */
  public boolean solveAgain(double[] heads) {
    solver.solve(rightHandSide, solution);
    for (int i = 0; i < size; i++) {
      heads[i] = solution.data[place[i]];
      if (!Double.isFinite(heads[i])) {
        return false;
      }
    }
    return true;
  }
}
