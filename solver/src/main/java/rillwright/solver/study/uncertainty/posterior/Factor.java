package rillwright.solver.study.uncertainty.posterior;

/**
 * The lower triangle L of a positive definite matrix A = L Lᵀ.
 *
 * <p>Source: Golub, G. H. and Van Loan, C. F., "Matrix Computations", Cholesky factorization (from
 * memory).
 */
final class Factor {
  private final double[][] lower;

  private Factor(double[][] lower) {
    this.lower = lower;
  }

  /** The factor of a matrix, of which the lower triangle is read. */
  static Factor of(double[][] matrix) {
    int size = matrix.length;
    double[][] lower = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        if (i == j) {
          lower[i][i] = Math.sqrt(Math.max(sum, 1e-12 * Math.abs(matrix[i][i]) + 1e-300));
        } else {
          lower[i][j] = sum / lower[j][j];
        }
      }
    }
    return new Factor(lower);
  }

  /** L v. */
  double[] times(double[] vector) {
    double[] product = new double[vector.length];
    for (int i = 0; i < vector.length; i++) {
      for (int j = 0; j <= i; j++) {
        product[i] += lower[i][j] * vector[j];
      }
    }
    return product;
  }

  /** The x of A x = b. */
  double[] solve(double[] right) {
    int size = right.length;
    double[] x = right.clone();
    for (int i = 0; i < size; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= lower[i][k] * x[k];
      }
      x[i] /= lower[i][i];
    }
    for (int i = size - 1; i >= 0; i--) {
      for (int k = i + 1; k < size; k++) {
        x[i] -= lower[k][i] * x[k];
      }
      x[i] /= lower[i][i];
    }
    return x;
  }
}
