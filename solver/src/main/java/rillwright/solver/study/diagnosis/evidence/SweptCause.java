package rillwright.solver.study.diagnosis.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.PondFall;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.reading.Span;

/**
 * A cause swept over its sizes. Between two nodes of the sweep the readings are interpolated
 * linearly at eight sizes; sizes at which nobody would call are left out, the others share the
 * cause's whole weight.
 */
public final class SweptCause implements Hypothesis {
  private static final int POINTS_A_SEGMENT = 8;

  private static final int POINTS_A_DEVIATION = 4;

  /** Over the whole range, beyond eight a segment: what may be read beyond measure has no end. */
  private static final int MOST_POINTS = 2000;

  private final Cause cause;
  private final Scope scope;
  private final List<Point> all;

  /** Those that count, what share of the range each is. */
  private final double[] share;

  private final Points points;

  private SweptCause(Cause cause, Scope scope, List<Point> all, Unnoticed unnoticed) {
    this.cause = cause;
    this.scope = scope;
    this.all = all;
    boolean every = unnoticed == Unnoticed.COUNTS || cause.mayGoUnnoticed();
    List<Point> counting =
        all.stream()
            .filter(point -> every || scope.isCalledFor(point.values()))
            .flatMap(this::withPondFalls)
            .toList();
    share = counting.stream().mapToDouble(Point::share).toArray();
    points =
        new Points(
            scope,
            counting.stream().mapToDouble(Point::weight).toArray(),
            counting.stream().map(Point::values).toArray(double[][]::new));
  }

  /** A point for each rate at which the pond may fall besides. */
  private Stream<Point> withPondFalls(Point point) {
    List<PondFall> rates = cause.effect().map(Effect::pondFalls).orElse(List.of());
    return rates.isEmpty()
        ? Stream.of(point)
        : rates.stream()
            .map(
                rate ->
                    new Point(
                        point.weight() * rate.weight(),
                        point.share(),
                        scope.withPondFalling(rate.mPerS(), point.values())));
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
  public enum Unnoticed {
    COUNTS,
    LEFT_OUT
  }

  /** Sweeps a cause. */
  public static SweptCause of(Cause cause, Effect effect, Scope scope, Unnoticed unnoticed) {
    List<Point> points =
        cause.sizes().map(sizes -> along(sizes, effect, scope)).orElseGet(() -> at(effect, scope));
    cause
        .sizes()
        .ifPresent(sizes -> points.removeIf(it -> !effect.isThereAt(sizes.at(it.share()))));
    return new SweptCause(cause, scope, points, unnoticed);
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
    return points.count() > 0;
  }

  @Override
  public Optional<SweptCause> swept() {
    return Optional.of(this);
  }

  @Override
  public Hypothesis withSlight() {
    return new SweptCause(cause, scope, all, Unnoticed.COUNTS);
  }

  /** The share of the range of a point, or which of several it is; all sizes count. */
  public double share(int point) {
    return all.get(point).share();
  }

  /** What everything would read there. */
  public double[] values(int point) {
    return all.get(point).values();
  }

  /**
   * Points from the least size to the greatest, slight ones too: they lie close where much changes.
   *
   * @param count how many at most
   */
  public int[] samples(int count) {
    int sizes = all.size();
    int taken = Math.min(count, sizes);
    return IntStream.range(0, taken)
        .map(i -> taken == 1 ? 0 : (int) ((long) i * (sizes - 1) / (taken - 1)))
        .toArray();
  }

  @Override
  public Belief given(Likelihood likelihood) {
    Points.Weighed weighed = points.given(likelihood);
    return new Sizes(weighed);
  }

  /** The sizes with how likely each is. */
  private final class Sizes implements Belief {
    private final Points.Weighed weighed;

    Sizes(Points.Weighed weighed) {
      this.weighed = weighed;
    }

    @Override
    public double logEvidence() {
      return weighed.logEvidence();
    }

    @Override
    public OptionalDouble size() {
      OptionalDouble mean = weighed.meanOf(share);
      return cause.sizes().isEmpty() || mean.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(cause.sizes().get().at(mean.getAsDouble()));
    }

    @Override
    public Optional<String> choice() {
      List<String> choices = cause.effect().map(Effect::choices).orElse(List.of());
      return choices.isEmpty() || share.length == 0
          ? Optional.empty()
          : Optional.of(choices.get((int) share[weighed.best()]));
    }

    @Override
    public OptionalDouble mean(int readable) {
      return weighed.mean(readable);
    }

    @Override
    public Optional<Span> span(int readable) {
      return weighed.span(readable);
    }

    @Override
    public void addDensity(int readable, Grid grid) {
      weighed.addDensity(readable, grid);
    }
  }
}
