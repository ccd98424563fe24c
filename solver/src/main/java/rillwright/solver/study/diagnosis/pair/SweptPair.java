package rillwright.solver.study.diagnosis.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.evidence.Belief;
import rillwright.solver.study.diagnosis.evidence.Likelihood;
import rillwright.solver.study.diagnosis.evidence.Points;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.evidence.Sweep;

/** Two faults at work at once, at the sizes about those that explain some readings best. */
public final class SweptPair {
  private static final double REACH = 3.5;

  /** At most: as many for each step between nodes, so 28 with five nodes. */
  private static final int POINTS_A_AXIS = 30;

  private static final int ROUGH_POINTS = 29;

  private final PairScreen.Candidate pair;
  private final Points points;
  private final Points.Weighed weighed;
  private final List<double[]> sizes;
  private final double logWeight;

  private SweptPair(
      PairScreen.Candidate pair,
      Points points,
      Points.Weighed weighed,
      List<double[]> sizes,
      double logWeight) {
    this.pair = pair;
    this.points = points;
    this.weighed = weighed;
    this.sizes = sizes;
    this.logWeight = logWeight;
  }

  /** Prior times evidence of a fitted pair, the readings taken as straight about it. */
  public static double roughLogWeight(PairScreen.Candidate pair, PairFit fit) {
    double[][] axes = fit.axes();
    double sum = 0;
    double peak = fit.log();
    int rows = axes.length > 0 ? ROUGH_POINTS : 1;
    int columns = axes.length > 1 ? ROUGH_POINTS : 1;
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < columns; j++) {
        double[] by = by(axes, middle(i, rows), middle(j, columns));
        if (isInside(fit, by)) {
          sum += Math.exp(fit.logAlong(by) - peak);
        }
      }
    }
    return pair.logPrior() + peak + Math.log(sum * area(axes, rows, columns));
  }

  /** Where a point lies along an axis, in standard deviations. */
  private static double middle(int point, int points) {
    return points == 1 ? 0 : REACH * (2 * (point + 0.5) / points - 1);
  }

  private static double[] by(double[][] axes, double first, double second) {
    double[] by = new double[2];
    double[] steps = {first, second};
    for (int a = 0; a < axes.length; a++) {
      by[0] += steps[a] * axes[a][0];
      by[1] += steps[a] * axes[a][1];
    }
    return by;
  }

  private static boolean isInside(PairFit fit, double[] by) {
    for (int dimension : fit.free()) {
      double size = fit.at()[dimension] + by[dimension];
      if (size < 0 || size > 1) {
        return false;
      }
    }
    return true;
  }

  /** What a point stands for, as a share of all sizes. */
  private static double area(double[][] axes, int rows, int columns) {
    double area = 1;
    if (axes.length > 0) {
      area *= 2 * REACH / rows * Math.hypot(axes[0][0], axes[0][1]);
    }
    if (axes.length > 1) {
      area *= 2 * REACH / columns * Math.hypot(axes[1][0], axes[1][1]);
    }
    return area;
  }

  /**
   * The pair swept about its fit, everything computed through at nodes; empty if nobody calls.
   *
   * @param finest how many nodes along an axis, an odd number
   */
  public static Optional<SweptPair> of(
      Scope scope,
      Likelihood likelihood,
      PairScreen.Candidate pair,
      PairFit fit,
      boolean slight,
      int finest) {
    double[][] axes = fit.axes();
    int rows = axes.length > 0 ? finest : 1;
    int columns = axes.length > 1 ? finest : 1;
    double[][][] nodes = new double[rows][columns][];
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < columns; j++) {
        nodes[i][j] = fit.everything(clamped(fit, by(axes, node(i, rows), node(j, columns))));
      }
    }
    int perStep = POINTS_A_AXIS / (finest - 1);
    int finerRows = rows == 1 ? 1 : (rows - 1) * perStep;
    int finerColumns = columns == 1 ? 1 : (columns - 1) * perStep;
    List<double[]> sizes = new ArrayList<>();
    List<double[]> values = new ArrayList<>();
    for (int i = 0; i < finerRows; i++) {
      for (int j = 0; j < finerColumns; j++) {
        double[] by = by(axes, middle(i, finerRows), middle(j, finerColumns));
        double[] there = between(nodes, i, finerRows, j, finerColumns, perStep);
        if (isInside(fit, by) && (slight || scope.isCalledFor(there))) {
          sizes.add(new double[] {fit.at()[0] + by[0], fit.at()[1] + by[1]});
          values.add(there);
        }
      }
    }
    if (values.isEmpty()) {
      return Optional.empty();
    }
    double[] weights = new double[values.size()];
    java.util.Arrays.fill(weights, 1);
    Points points = new Points(scope, weights, values.toArray(double[][]::new));
    Points.Weighed weighed = points.given(likelihood);
    double share = values.size() * area(axes, finerRows, finerColumns);
    return Optional.of(
        new SweptPair(
            pair,
            points,
            weighed,
            sizes,
            pair.logPrior() + weighed.logEvidence() + Math.log(share)));
  }

  private static double node(int node, int nodes) {
    return nodes == 1 ? 0 : REACH * (2.0 * node / (nodes - 1) - 1);
  }

  private static double[] clamped(PairFit fit, double[] by) {
    double[] sizes = fit.at();
    for (int dimension : fit.free()) {
      sizes[dimension] = Math.max(0, Math.min(1, sizes[dimension] + by[dimension]));
    }
    return sizes;
  }

  private static double[] between(
      double[][][] nodes, int i, int rows, int j, int columns, int perStep) {
    double y = rows == 1 ? 0 : (i + 0.5) / perStep;
    double x = columns == 1 ? 0 : (j + 0.5) / perStep;
    int row = (int) y;
    int column = (int) x;
    double[][] above = nodes[row];
    double[][] below = nodes[Math.min(row + 1, nodes.length - 1)];
    int next = Math.min(column + 1, above.length - 1);
    return Sweep.between(
        Sweep.between(above[column], above[next], x - column),
        Sweep.between(below[column], below[next], x - column),
        y - row);
  }

  /** Logarithm of prior times signs times evidence. */
  public double logWeight() {
    return logWeight;
  }

  /** What is believed of it. */
  public Belief belief() {
    return weighed;
  }

  public double[] best() {
    return points.values(weighed.best());
  }

  /** The pair with how likely it is. */
  public PairExplanation explanation(double probability, List<OptionalDouble> predicted) {
    return new PairExplanation(
        member(pair.one().cause(), 0), member(pair.other().cause(), 1), probability, predicted);
  }

  private PairExplanation.Member member(Cause cause, int dimension) {
    OptionalDouble mean =
        weighed.meanOf(sizes.stream().mapToDouble(both -> both[dimension]).toArray());
    List<String> choices = cause.effect().map(Effect::choices).orElse(List.of());
    return new PairExplanation.Member(
        cause,
        cause.sizes().isPresent()
            ? OptionalDouble.of(cause.sizes().get().at(mean.orElseThrow()))
            : OptionalDouble.empty(),
        choices.isEmpty()
            ? Optional.empty()
            : Optional.of(choices.get((int) Math.round(mean.orElseThrow()))));
  }
}
