package rillwright.solver.balance.linear;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.ejml.sparse.csc.linsol.chol.LinearSolverCholesky_DSCC;

/**
 * The nodal matrix Σ (eᵢ − eⱼ)(eᵢ − eⱼ)ᵀ/D of a fixed pattern of links, A H = b, by sparse
 * Cholesky. Each step overwrites the numbers.
 */
public final class NodalSystem {
  private final EdgePattern edges;
  private final DMatrixSparseCSC matrix;
  private final DMatrixRMaj rightHandSide;
  private final DMatrixRMaj solution;
  private final LinearSolverCholesky_DSCC solver;

  /** The system of a pattern, whose nodes' heads are unknown. */
  public NodalSystem(EdgePattern edges) {
    this.edges = edges;
    int size = edges.size();
    this.matrix = edges.matrix();
    this.rightHandSide = new DMatrixRMaj(size, 1);
    this.solution = new DMatrixRMaj(size, 1);
    this.solver = new LinearSolverCholesky_DSCC(new CholeskyUpLooking_DSCC(), null);
    this.solver.setStructureLocked(true);
  }

  /** Sets every number to 0. */
  public void clear() {
    Arrays.fill(matrix.nz_values, 0, matrix.nz_length, 0);
    clearRightHandSide();
  }

  /** Adds to the diagonal of a node. */
  public void addToDiagonal(int node, double value) {
    matrix.nz_values[edges.diagonalSlot[node]] += value;
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
      matrix.nz_values[edges.edgeSlot[edge]] -= conductance;
    }
  }

  /** Adds to the right-hand side of a node. */
  public void addToRightHandSide(int node, double value) {
    rightHandSide.data[edges.place[node]] += value;
  }

  /**
   * Solves the system; false if the matrix is not positive definite or the answer not finite.
   *
   * @param heads where the answer is written, indexed by node; length at least size
   */
  public boolean solve(double[] heads) {
    if (edges.size() == 0) {
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
    for (int i = 0; i < edges.size(); i++) {
      heads[i] = solution.data[edges.place[i]];
      if (!Double.isFinite(heads[i])) {
        return false;
      }
    }
    return true;
  }
}
