package rillwright.solver.study.diagnosis.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.PondFall;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.Span;
import rillwright.solver.study.diagnosis.reading.Tolerance;

/**
 * Makes calls to a job: a cause by its prior, a size by its range, drawn again until a fall is so
 * weak that somebody calls; everything as it would be read, with normal errors cut off at two
 * deviations; some of it read, one reading of a fall at least.
 */
public final class CallMaker {
  private static final int MOST_SIZES = 200;

  /** Causes that are drawn for a call at most. */
  private static final int MOST_CAUSES = 200;

  /**
   * No more is drawn for a call after so much work, Newton steps times lines: so much for any job
   * and so much for each of its lines. A call to fish-pond took up to a third of it.
   */
  private static final double MOST_WORK = 500_000;

  private static final double MOST_WORK_A_LINE = 60_000;

  private static final double CUT_OFF_DEVIATIONS = 2;

  private final TrialJob job;
  private final Scope scope;
  private final Random dice;

  /** Makes calls to a job with dice. */
  public CallMaker(TrialJob job, Random dice) {
    this.job = job;
    this.scope = job.diagnostician().scope();
    this.dice = dice;
  }

  /**
   * A call with a number of readings, and more that could be read.
   *
   * @throws NoCall if no cause that is drawn makes one
   */
  public SimulatedCall make(int readings) {
    double end = endOfWork();
    for (int drawn = 0; drawn < MOST_CAUSES; drawn++) {
      Cause truth = drawnCause();
      for (int i = 0; i < MOST_SIZES && scope.linesSolved() < end; i++) {
        double size = drawnSize(truth);
        if (!truth.effect().map(effect -> effect.isThereAt(size)).orElse(true)) {
          continue;
        }
        double[] values = valuesWith(truth, size);
        boolean isCalled = truth.mayGoUnnoticed() || scope.isCalledFor(values);
        if (isCalled && canBeRead(values, readings)) {
          return read(truth, size, values, readings);
        }
        if (truth.sizes().isEmpty()
            && truth.effect().map(e -> e.choices().isEmpty()).orElse(true)) {
          break;
        }
      }
    }
    throw new NoCall();
  }

  /** A call with two faults at once in places apart; the truth is that of the first of them. */
  PairCall makePair(int readings) {
    double end = endOfWork();
    for (int drawn = 0; drawn < MOST_CAUSES; drawn++) {
      Cause one = drawnCause();
      Cause other = drawnCause();
      if (!isFault(one) || !isFault(other) || isOneThing(one, other)) {
        continue;
      }
      for (int i = 0; i < MOST_SIZES && scope.linesSolved() < end; i++) {
        double sizeOfOne = drawnSize(one);
        double sizeOfOther = drawnSize(other);
        double[] values = scope.predict(List.of(sized(one, sizeOfOne), sized(other, sizeOfOther)));
        if (scope.isCalledFor(values) && canBeRead(values, readings)) {
          return new PairCall(one, other, read(one, sizeOfOne, values, readings).readings());
        }
      }
    }
    throw new NoCall();
  }

  private double endOfWork() {
    return scope.linesSolved()
        + MOST_WORK
        + MOST_WORK_A_LINE * scope.job().network().lines().size();
  }

  /** Two faults and what was read. */
  record PairCall(Cause one, Cause other, List<Reading> readings) {}

  private static boolean isFault(Cause cause) {
    return cause.effect().isPresent() && !cause.mayGoUnnoticed();
  }

  private static boolean isOneThing(Cause one, Cause other) {
    return one.id().at().equals(other.id().at()) && one.id().part().equals(other.id().part());
  }

  private static Scope.Sized sized(Cause cause, double size) {
    return new Scope.Sized(cause.effect().orElseThrow(), size);
  }

  private double drawnSize(Cause truth) {
    if (truth.sizes().isPresent()) {
      return truth.sizes().get().at(dice.nextDouble());
    }
    int choices = truth.effect().map(effect -> effect.choices().size()).orElse(0);
    return choices > 0 ? dice.nextInt(choices) : 0;
  }

  /** Enough for the readings and one more, and that the fall is weak. */
  private boolean canBeRead(double[] values, int readings) {
    int[] read =
        IntStream.range(0, scope.readables().size())
            .filter(i -> Double.isFinite(values[i]) && !isLook(i))
            .toArray();
    return read.length > readings && Arrays.stream(read).anyMatch(scope::showsWeakness);
  }

  private Cause drawnCause() {
    double mark = dice.nextDouble();
    for (Cause cause : job.causes().causes()) {
      mark -= cause.prior();
      if (mark < 0) {
        return cause;
      }
    }
    return job.causes().causes().get(0);
  }

  private double drawn(List<PondFall> rates) {
    double mark = dice.nextDouble();
    for (PondFall rate : rates) {
      mark -= rate.weight();
      if (mark < 0) {
        return rate.mPerS();
      }
    }
    return rates.get(0).mPerS();
  }

  private double[] valuesWith(Cause truth, double size) {
    if (truth.effect().isPresent()) {
      double[] values = scope.predict(List.of(new Scope.Sized(truth.effect().get(), size)));
      List<PondFall> rates = truth.effect().get().pondFalls();
      return rates.isEmpty() ? values : scope.withPondFalling(drawn(rates), values);
    }
    double[] values = new double[scope.readables().size()];
    for (int i = 0; i < values.length; i++) {
      Measurand readable = scope.readables().get(i);
      Span span = readable.anything(scope.job(), scope.asBuilt(readable).orElse(0));
      values[i] = span.least() + dice.nextDouble() * span.width();
    }
    return values;
  }

  private SimulatedCall read(Cause truth, double size, double[] values, int count) {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < scope.readables().size(); i++) {
      if (!Double.isNaN(values[i])) {
        all.add(i);
      }
    }
    Collections.shuffle(all, dice);
    int ofFall = all.stream().filter(i -> scope.showsWeakness(i)).findFirst().orElseThrow();
    all.remove(Integer.valueOf(ofFall));
    all.add(0, ofFall);
    List<Integer> taken = all.stream().filter(i -> !isLook(i)).limit(count).toList();
    List<Integer> rest = all.stream().filter(i -> !taken.contains(i)).toList();
    return new SimulatedCall(truth, size, readings(taken, values), readings(rest, values));
  }

  private boolean isLook(int readable) {
    return isLook(scope.readables().get(readable));
  }

  /** Whether it is taken without gauge, bucket or ruler: no call comes with it. */
  static boolean isLook(Measurand what) {
    return what instanceof Sight || what instanceof Meter;
  }

  private List<Reading> readings(List<Integer> readables, double[] values) {
    return readables.stream().map(i -> read(scope.readables().get(i), values[i])).toList();
  }

  private Reading read(Measurand readable, double value) {
    if (readable instanceof Sight) {
      return new Reading(readable, dice.nextDouble() < value ? 1 : 0, readable.usualTolerance());
    }
    Tolerance tolerance = readable.usualTolerance();
    double error = dice.nextGaussian();
    while (Math.abs(error) > CUT_OFF_DEVIATIONS) {
      error = dice.nextGaussian();
    }
    return new Reading(readable, value + error * tolerance.instrumentDeviationAt(value), tolerance);
  }
}
