package rillwright.solver.study.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.reading.Reading;

/**
 * Finds two causes that explain together what no single one does. All pairs are tried first as if
 * each cause moved the readings whatever the other does; the most promising are then computed
 * through, sizes on a grid and the readings interpolated in between.
 */
final class PairSearch {
  private static final int PROMISING = 10;
  private static final int FIRST_SIZES = 9;
  private static final int GRID = 6;
  private static final int POINTS_A_STEP = 6;
  private static final int MOST_SHOWN = 3;

  private final Scope scope;
  private final List<SweptCause> swept;
  private final List<Reading> readings;
  private final ToDoubleFunction<Cause> signs;

  PairSearch(
      Scope scope, List<SweptCause> swept, List<Reading> readings, ToDoubleFunction<Cause> signs) {
    this.scope = scope;
    this.swept = swept;
    this.readings = readings;
    this.signs = signs;
  }

  private record Candidate(SweptCause one, SweptCause other, double logWeight) {}

  private record Weighed(PairExplanation pair, double logWeight) {}

  /** The likeliest pairs by which all readings fit, likeliest first. */
  List<PairExplanation> find() {
    return promising().stream()
        .map(this::weigh)
        .filter(weighed -> weighed.logWeight() > Double.NEGATIVE_INFINITY)
        .filter(weighed -> fits(weighed.pair()))
        .sorted(Comparator.comparingDouble((Weighed weighed) -> -weighed.logWeight()))
        .limit(MOST_SHOWN)
        .map(Weighed::pair)
        .toList();
  }

  private boolean fits(PairExplanation pair) {
    for (int i = 0; i < readings.size(); i++) {
      Reading reading = readings.get(i);
      OptionalDouble predicted = pair.predicted().get(i);
      boolean tells = scope.asBuilt(reading.what()).isPresent();
      if (tells && !(predicted.isPresent() && scope.fits(reading, predicted.getAsDouble()))) {
        return false;
      }
    }
    return true;
  }

  private List<Candidate> promising() {
    List<Candidate> all = new ArrayList<>();
    for (int a = 0; a < swept.size(); a++) {
      for (int b = a + 1; b < swept.size(); b++) {
        all.add(new Candidate(swept.get(a), swept.get(b), roughLogWeight(a, b)));
      }
    }
    all.sort(Comparator.comparingDouble((Candidate candidate) -> -candidate.logWeight()));
    return all.subList(0, Math.min(PROMISING, all.size()));
  }

  private double roughLogWeight(int a, int b) {
    List<double[]> ones = swept.get(a).samples(FIRST_SIZES);
    List<double[]> others = swept.get(b).samples(FIRST_SIZES);
    double best = Double.NEGATIVE_INFINITY;
    for (double[] one : ones) {
      for (double[] other : others) {
        best = Math.max(best, swept.get(a).logLikelihood(readings, together(one, other)));
      }
    }
    return logPrior(swept.get(a).cause()) + logPrior(swept.get(b).cause()) + best;
  }

  private double logPrior(Cause cause) {
    return Math.log(cause.prior()) + Math.log(signs.applyAsDouble(cause));
  }

  /** Both changes one upon the other. */
  private double[] together(double[] one, double[] other) {
    double[] both = new double[one.length];
    for (int i = 0; i < both.length; i++) {
      both[i] = one[i] + other[i] - scope.asBuilt(i);
    }
    return both;
  }

  private Weighed weigh(Candidate candidate) {
    Cause one = candidate.one().cause();
    Cause other = candidate.other().cause();
    int rows = one.sizes().isPresent() ? GRID : 1;
    int columns = other.sizes().isPresent() ? GRID : 1;
    double[][][] nodes = new double[rows][columns][];
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < columns; j++) {
        nodes[i][j] =
            scope.predict(List.of(sized(one, share(i, rows)), sized(other, share(j, columns))));
      }
    }
    Integral integral = new Integral(candidate.one());
    for (int i = 0; i < points(rows); i++) {
      for (int j = 0; j < points(columns); j++) {
        integral.add(position(i, rows), position(j, columns), bilinear(nodes, rows, columns, i, j));
      }
    }
    double logWeight = logPrior(one) + logPrior(other) + integral.logMean();
    return new Weighed(integral.explanation(one, other), logWeight);
  }

  private static Scope.Sized sized(Cause cause, double share) {
    double size = cause.sizes().map(sizes -> sizes.at(share)).orElse(0.0);
    return new Scope.Sized(cause.effect().orElseThrow(), size);
  }

  private static double share(int node, int nodes) {
    return nodes == 1 ? 0 : node / (nodes - 1.0);
  }

  private static int points(int nodes) {
    return nodes == 1 ? 1 : (nodes - 1) * POINTS_A_STEP;
  }

  /** Where a point lies among the nodes, in steps. */
  private static double position(int point, int nodes) {
    return nodes == 1 ? 0 : (point + 0.5) / POINTS_A_STEP;
  }

  private static double[] bilinear(double[][][] nodes, int rows, int columns, int i, int j) {
    double y = position(i, rows);
    double x = position(j, columns);
    int row = (int) y;
    int column = (int) x;
    double down = y - row;
    double right = x - column;
    int nextRow = Math.min(row + 1, rows - 1);
    int nextColumn = Math.min(column + 1, columns - 1);
    double[] values = new double[nodes[0][0].length];
    for (int k = 0; k < values.length; k++) {
      double upper = (1 - right) * nodes[row][column][k] + right * nodes[row][nextColumn][k];
      double lower =
          (1 - right) * nodes[nextRow][column][k] + right * nodes[nextRow][nextColumn][k];
      values[k] = (1 - down) * upper + down * lower;
    }
    return values;
  }

  /** The likelihood over the sizes of a pair. */
  private final class Integral {
    private final SweptCause likelihood;
    private final List<Double> logs = new ArrayList<>();
    private double highest = Double.NEGATIVE_INFINITY;
    private double[] best = nothing();
    private double bestRow;
    private double bestColumn;

    Integral(SweptCause likelihood) {
      this.likelihood = likelihood;
    }

    private double[] nothing() {
      double[] values = new double[scope.size()];
      Arrays.fill(values, Double.NaN);
      return values;
    }

    void add(double row, double column, double[] values) {
      if (!scope.isCalledFor(values)) {
        return;
      }
      double log = likelihood.logLikelihood(readings, values);
      logs.add(log);
      if (log > highest) {
        highest = log;
        best = values;
        bestRow = row;
        bestColumn = column;
      }
    }

    double logMean() {
      double sum = 0;
      for (double log : logs) {
        sum += Math.exp(log - highest);
      }
      return logs.isEmpty() ? Double.NEGATIVE_INFINITY : highest + Math.log(sum / logs.size());
    }

    PairExplanation explanation(Cause one, Cause other) {
      List<OptionalDouble> predicted =
          readings.stream()
              .map(reading -> Scope.known(best[scope.indexOf(reading.what())]))
              .toList();
      return new PairExplanation(
          one, size(one, bestRow), other, size(other, bestColumn), predicted);
    }

    private OptionalDouble size(Cause cause, double position) {
      return cause.sizes().isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(cause.sizes().get().at(position / (GRID - 1)));
    }
  }
}
