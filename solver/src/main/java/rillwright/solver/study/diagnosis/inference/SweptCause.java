package rillwright.solver.study.diagnosis.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Span;

/**
 * A cause swept over its sizes. Between two nodes of the sweep the readings are interpolated
 * linearly at eight sizes; sizes at which nobody would call are left out, the others share the
 * cause's whole weight.
 */
final class SweptCause implements Hypothesis {
  private static final int POINTS_A_SEGMENT = 8;

  private static final int POINTS_A_DEVIATION = 4;

  /** Over the whole range, beyond eight a segment: what may be read beyond measure has no end. */
  private static final int MOST_POINTS = 2000;

  /** How likely a reading is, as a share of what is likely, where there is nothing to read. */
  private static final double LOG_DENSITY_OF_NOTHING_TO_READ = StudentT.logDensity(8);

  private final Cause cause;
  private final Scope scope;

  /** Weights of sizes, summing to 1, what share of the range each is, and the readings there. */
  private final double[] weight;

  private final double[] share;
  private final double[][] values;

  private SweptCause(Cause cause, Scope scope, List<Point> points) {
    this.cause = cause;
    this.scope = scope;
    double sum = points.stream().mapToDouble(Point::weight).sum();
    weight = points.stream().mapToDouble(point -> point.weight() / sum).toArray();
    share = points.stream().mapToDouble(Point::share).toArray();
    values = points.stream().map(Point::values).toArray(double[][]::new);
  }

  /** A size, how much it weighs, and what everything would read at it. */
  private static final class Point {
    private final double weight;
    private final double share;
    private final double[] values;

    Point(double weight, double share, double[] values) {
      this.weight = weight;
      this.share = share;
      this.values = values;
    }

    double weight() {
      return weight;
    }

    double share() {
      return share;
    }

    double[] values() {
      return values;
    }
  }

  /** Whether sizes that weaken no fall count. */
  enum Unnoticed {
    COUNTS,
    LEFT_OUT
  }

  /** Sweeps a cause. */
  static SweptCause of(Cause cause, Effect effect, Scope scope, Unnoticed unnoticed) {
    List<Point> points =
        cause.sizes().map(sizes -> along(sizes, effect, scope)).orElseGet(() -> at(effect, scope));
    cause
        .sizes()
        .ifPresent(sizes -> points.removeIf(it -> !effect.isThereAt(sizes.at(it.share()))));
    if (unnoticed == Unnoticed.LEFT_OUT && !cause.mayGoUnnoticed()) {
      points.removeIf(point -> !scope.isCalledFor(point.values()));
    }
    return new SweptCause(cause, scope, points);
  }

  private static List<Point> at(Effect effect, Scope scope) {
    List<Point> points = new ArrayList<>();
    for (int which = 0; which < Math.max(1, effect.choices().size()); which++) {
      points.add(new Point(1, which, scope.predict(List.of(new Scope.Sized(effect, which)))));
    }
    return points;
  }

  private static List<Point> along(SizeRange sizes, Effect effect, Scope scope) {
    List<Sweep> sweeps =
        scope.states().stream().map(state -> Sweep.of(scope, effect, sizes, state)).toList();
    double[] edges =
        sweeps.stream()
            .flatMap(sweep -> sweep.nodes().stream())
            .mapToDouble(Sweep.Node::share)
            .sorted()
            .distinct()
            .toArray();
    List<Point> points = new ArrayList<>();
    for (int i = 0; i + 1 < edges.length; i++) {
      double width = edges[i + 1] - edges[i];
      int count = pointsBetween(sweeps, edges[i], edges[i + 1]);
      for (int k = 0; k < count; k++) {
        double share = edges[i] + (k + 0.5) / count * width;
        points.add(new Point(width / count, share, together(sweeps, share)));
      }
    }
    return points;
  }

  /** Eight, and more, up to a bound, where a reading moves far along a straight line. */
  private static int pointsBetween(List<Sweep> sweeps, double from, double to) {
    double apart = 0;
    for (Sweep sweep : sweeps) {
      Sweep.Node low = new Sweep.Node(from, sweep.valuesAt(from));
      Sweep.Node high = new Sweep.Node(to, sweep.valuesAt(to));
      apart = Math.max(apart, sweep.apart(low, high));
    }
    double wanted = Math.min(POINTS_A_DEVIATION * apart, MOST_POINTS * (to - from));
    return (int) Math.max(POINTS_A_SEGMENT, Math.ceil(wanted));
  }

  /** The readings of all states. */
  private static double[] together(List<Sweep> sweeps, double share) {
    double[] values = sweeps.get(0).valuesAt(share).clone();
    for (Sweep sweep : sweeps.subList(1, sweeps.size())) {
      double[] others = sweep.valuesAt(share);
      for (int i = 0; i < values.length; i++) {
        values[i] = Double.isNaN(values[i]) ? others[i] : values[i];
      }
    }
    return values;
  }

  @Override
  public Cause cause() {
    return cause;
  }

  /** At one size at least somebody would call. */
  @Override
  public boolean isPossible() {
    return weight.length > 0;
  }

  @Override
  public Optional<SweptCause> swept() {
    return Optional.of(this);
  }

  @Override
  public Belief given(List<Reading> readings) {
    double[] log = new double[weight.length];
    double highest = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < log.length; k++) {
      log[k] = logLikelihood(readings, values[k]);
      highest = Math.max(highest, log[k]);
    }
    double[] posterior = new double[weight.length];
    double sum = 0;
    for (int k = 0; k < log.length; k++) {
      posterior[k] = weight[k] * Math.exp(log[k] - highest);
      sum += posterior[k];
    }
    for (int k = 0; k < log.length; k++) {
      posterior[k] /= sum;
    }
    return new Sizes(posterior, sum > 0 ? highest + Math.log(sum) : Double.NEGATIVE_INFINITY);
  }

  /** What everything would read at some sizes, from the least to the greatest that count. */
  List<double[]> samples(int count) {
    List<double[]> samples = new ArrayList<>();
    int sizes = values.length;
    for (int i = 0; i < Math.min(count, sizes); i++) {
      samples.add(
          values[
              sizes == 1
                  ? 0
                  : (int) ((long) i * (sizes - 1) / Math.max(1, Math.min(count, sizes) - 1))]);
    }
    return samples;
  }

  double logLikelihood(List<Reading> readings, double[] predicted) {
    double log = 0;
    for (Reading reading : readings) {
      int index = scope.indexOf(reading.what());
      double value = predicted[index];
      boolean nothing = Double.isNaN(value);
      double about = nothing ? reading.value() : value;
      double deviation = scope.deviation(index, about, reading.tolerance());
      log -= Math.log(deviation);
      log +=
          nothing
              ? LOG_DENSITY_OF_NOTHING_TO_READ
              : StudentT.logDensity((reading.value() - value) / deviation);
    }
    return log;
  }

  /** The sizes with how likely each is. */
  private final class Sizes implements Belief {
    private static final double TRIFLE = 1e-6;

    private final double[] posterior;
    private final double logEvidence;

    Sizes(double[] posterior, double logEvidence) {
      this.posterior = posterior;
      this.logEvidence = logEvidence;
    }

    @Override
    public double logEvidence() {
      return logEvidence;
    }

    @Override
    public OptionalDouble size() {
      if (cause.sizes().isEmpty() || posterior.length == 0) {
        return OptionalDouble.empty();
      }
      double mean = 0;
      for (int k = 0; k < posterior.length; k++) {
        mean += posterior[k] * share[k];
      }
      return OptionalDouble.of(cause.sizes().get().at(mean));
    }

    @Override
    public Optional<String> choice() {
      List<String> choices = cause.effect().map(Effect::choices).orElse(List.of());
      int best = 0;
      for (int k = 0; k < posterior.length; k++) {
        best = posterior[k] > posterior[best] ? k : best;
      }
      return choices.isEmpty() || posterior.length == 0
          ? Optional.empty()
          : Optional.of(choices.get((int) share[best]));
    }

    @Override
    public OptionalDouble mean(int readable) {
      double sum = 0;
      double mean = 0;
      for (int k = 0; k < posterior.length; k++) {
        if (!Double.isNaN(values[k][readable])) {
          sum += posterior[k];
          mean += posterior[k] * values[k][readable];
        }
      }
      return sum > 0.5 ? OptionalDouble.of(mean / sum) : OptionalDouble.empty();
    }

    @Override
    public Optional<Span> span(int readable) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < posterior.length; k++) {
        double value = values[k][readable];
        if (posterior[k] > TRIFLE && !Double.isNaN(value)) {
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
      }
      return low <= high ? Optional.of(new Span(low, high)) : Optional.empty();
    }

    @Override
    public void addDensity(int readable, Grid grid) {
      double[] bins = new double[grid.mass.length];
      for (int k = 0; k < posterior.length; k++) {
        if (!Double.isNaN(values[k][readable])) {
          bins[grid.cellOf(values[k][readable])] += posterior[k];
        }
      }
      for (int cell = 0; cell < bins.length; cell++) {
        if (bins[cell] > TRIFLE) {
          grid.spread(cell, bins[cell], scope.usualDeviation(readable, grid.valueOf(cell)));
        }
      }
    }
  }
}
