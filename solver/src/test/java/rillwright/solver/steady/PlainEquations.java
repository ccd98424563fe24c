package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * The equations of a network as they stand in any textbook, for a general solver of least squares:
 * at each free point inflow = outflow, along each line the law. Unknown are all flows (litres a
 * second) and all free heads (m).
 */
final class PlainEquations {
  private static final double LITRE = 1e-3;
  private static final double SOLVED = 1e-9;

  private record Line(int from, int to, DoubleUnaryOperator headLoss) {}

  private final List<Double> held = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();

  /** A point held at a head; returns its number. */
  int held(double headM) {
    held.add(headM);
    return held.size() - 1;
  }

  /** A point whose head is unknown; returns its number. */
  int free() {
    held.add(Double.NaN);
    return held.size() - 1;
  }

  void line(int from, int to, DoubleUnaryOperator headLoss) {
    lines.add(new Line(from, to, headLoss));
  }

  /** The flows of all lines, m³/s; empty if the general solver finds none. */
  Optional<double[]> solve() {
    int unknowns = lines.size() + (int) held.stream().filter(head -> head.isNaN()).count();
    double[] start = new double[unknowns];
    Arrays.fill(start, 1);
    try {
      Optimum optimum =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(1e-15)
              .withParameterRelativeTolerance(1e-15)
              .withOrthoTolerance(1e-15)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(start)
                      .target(new double[unknowns])
                      .model(this::valueAndSlopes)
                      .maxEvaluations(1000)
                      .maxIterations(1000)
                      .build());
      if (!(optimum.getRMS() < SOLVED)) {
        return Optional.empty();
      }
      double[] flows = new double[lines.size()];
      for (int k = 0; k < flows.length; k++) {
        flows[k] = LITRE * optimum.getPoint().getEntry(k);
      }
      return Optional.of(flows);
    } catch (MathIllegalStateException e) {
      return Optional.empty();
    }
  }

  private Pair<RealVector, RealMatrix> valueAndSlopes(RealVector at) {
    double[] x = at.toArray();
    double[] value = residuals(x);
    double[][] slopes = new double[value.length][x.length];
    for (int j = 0; j < x.length; j++) {
      double before = x[j];
      double step = 1e-6 * Math.max(1e-3, Math.abs(before));
      x[j] = before + step;
      double[] above = residuals(x);
      x[j] = before - step;
      double[] below = residuals(x);
      x[j] = before;
      for (int i = 0; i < value.length; i++) {
        slopes[i][j] = (above[i] - below[i]) / (2 * step);
      }
    }
    return new Pair<>(new ArrayRealVector(value), new Array2DRowRealMatrix(slopes));
  }

  private double[] residuals(double[] x) {
    double[] heads = new double[held.size()];
    int[] row = new int[held.size()];
    int next = lines.size();
    for (int i = 0; i < heads.length; i++) {
      boolean free = held.get(i).isNaN();
      row[i] = free ? next : -1;
      heads[i] = free ? x[next++] : held.get(i);
    }
    double[] residuals = new double[next];
    for (int k = 0; k < lines.size(); k++) {
      Line line = lines.get(k);
      residuals[k] = heads[line.from] - heads[line.to] - line.headLoss.applyAsDouble(LITRE * x[k]);
      if (row[line.from] >= 0) {
        residuals[row[line.from]] -= x[k];
      }
      if (row[line.to] >= 0) {
        residuals[row[line.to]] += x[k];
      }
    }
    return residuals;
  }
}
