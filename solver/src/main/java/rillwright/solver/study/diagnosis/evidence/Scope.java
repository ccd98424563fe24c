package rillwright.solver.study.diagnosis.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.PondFall;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.MeasurandList;
import rillwright.solver.study.diagnosis.reading.Observed;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.Tolerance;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * What is watched at a job: everything that could be read, numbered, with what it would be as
 * built. Values that cannot be read are NaN.
 */
public final class Scope {
  private static final When RUNNING = new When.Running();

  /** A fall, an outlet or a return is weak that lost a tenth of its flow or of its head. */
  private static final double WEAK_SHARE = 0.9;

  private static final double FITS_DEVIATIONS = 3;

  /** Newton steps that it takes to find that there is no balance, or so. */
  private static final int STEPS_OF_NONE = 20;

  /** Of something that is seen or not. */
  private static final double LEAST_VARIANCE = 0.01;

  private final AsBuilt job;
  private final List<Measurand> readables;
  private final Map<Measurand, Integer> indices = new HashMap<>();
  private final Map<When, List<Integer>> byState = new LinkedHashMap<>();
  private final Map<When, Observed> builtStates = new HashMap<>();

  /** Lines that end in open water: what they bring is watched, behind all readables. */
  private final List<LineName> returns;

  /** What all predictions took so far, Newton steps times lines. */
  private final LongAdder linesSolved = new LongAdder();

  private final double[] asBuilt;
  private final double[] fromZero;
  private final int[] showWeakness;

  private Scope(AsBuilt job, Collection<Measurand> readables) {
    this.job = job;
    this.readables = List.copyOf(readables);
    for (int i = 0; i < this.readables.size(); i++) {
      indices.put(this.readables.get(i), i);
      byState.computeIfAbsent(this.readables.get(i).when(), state -> new ArrayList<>()).add(i);
    }
    for (When state : states()) {
      Observed.of(new Alteration(job.network(), job.facts()), state)
          .ifPresent(observed -> builtStates.put(state, observed));
    }
    this.returns =
        job.network().lines().stream()
            .filter(line -> job.network().point(line.to()).heldHeadM().isPresent())
            .map(Line::name)
            .toList();
    this.asBuilt = predict(List.of());
    this.fromZero = asBuilt.clone();
    for (int i = 0; i < size(); i++) {
      fromZero[i] -= this.readables.get(i).zero(job);
    }
    this.showWeakness =
        IntStream.concat(
                this.readables.stream()
                    .filter(readable -> readable.tell(new ShowsWeakness()))
                    .mapToInt(indices::get),
                IntStream.range(size(), size() + returns.size()))
            .toArray();
  }

  /**
   * The scope of a job.
   *
   * @param asked readables that belong to it even if nobody would think of them
   */
  public static Scope of(AsBuilt job, Collection<Measurand> asked) {
    Set<Measurand> all = new LinkedHashSet<>(MeasurandList.of(job));
    all.addAll(asked);
    return new Scope(job, all);
  }

  /** The job as built. */
  public AsBuilt job() {
    return job;
  }

  /** Everything that is watched. */
  public List<Measurand> readables() {
    return readables;
  }

  public int size() {
    return readables.size();
  }

  /** The number of a readable. */
  public int indexOf(Measurand readable) {
    return indices.get(readable);
  }

  /** What a readable would be as built; empty where there is nothing to read. */
  public OptionalDouble asBuilt(Measurand readable) {
    return known(asBuilt[indexOf(readable)]);
  }

  public static OptionalDouble known(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  public double asBuilt(int index) {
    return asBuilt[index];
  }

  /** Standard deviation of a reading of a readable, about what is predicted. */
  public double deviation(int index, double predicted, Tolerance tolerance) {
    if (readables.get(index) instanceof Sight) {
      return Math.sqrt(Math.max(LEAST_VARIANCE, predicted * (1 - predicted)));
    }
    double scale = Double.isNaN(fromZero[index]) ? 0 : fromZero[index];
    return tolerance.deviationAt(predicted, scale);
  }

  /**
   * By how many standard deviations a reading is off what is predicted; a pond that falls faster
   * may leak besides.
   */
  public double misfit(Reading reading, double predicted) {
    int index = indexOf(reading.what());
    double off = (reading.value() - predicted) / deviation(index, predicted, reading.tolerance());
    return off > 0
            && PondFall.isReadIn(reading.what())
            && reading.value() <= PondFall.FASTEST_M_PER_S
        ? 0
        : off;
  }

  /** Whether a reading may well show what is predicted: it is off by three deviations at most. */
  public boolean fits(Reading reading, double predicted) {
    return Math.abs(misfit(reading, predicted)) <= FITS_DEVIATIONS;
  }

  /** The same as closely as it is usually read. */
  public double usualDeviation(int index, double predicted) {
    return deviation(index, predicted, readables.get(index).usualTolerance());
  }

  /** One effect at a size. */
  public record Sized(Effect effect, double size) {}

  /** The states of the job in which anything is read. */
  public Set<When> states() {
    return byState.keySet();
  }

  /** What all readables would be with effects at work. */
  public double[] predict(List<Sized> effects) {
    double[] values = nothing();
    for (When state : states()) {
      predict(effects, state, values);
    }
    return values;
  }

  /** The same in some states; NaN for what is read in others. */
  public double[] predict(List<Sized> effects, Set<When> states) {
    double[] values = nothing();
    for (When state : states) {
      predict(effects, state, values);
    }
    return values;
  }

  /** The states in which some readings are taken, and as it runs. */
  public Set<When> statesOf(List<Reading> readings) {
    Set<When> states = new LinkedHashSet<>(Set.of(RUNNING));
    readings.forEach(reading -> states.add(reading.what().when()));
    return states;
  }

  /** The same in one state; NaN for what is read in others. */
  public double[] predict(List<Sized> effects, When state) {
    double[] values = nothing();
    predict(effects, state, values);
    return values;
  }

  private double[] nothing() {
    double[] values = new double[size() + returns.size()];
    Arrays.fill(values, Double.NaN);
    return values;
  }

  private void predict(List<Sized> effects, When state, double[] values) {
    Alteration altered = new Alteration(job.network(), job.facts());
    effects.forEach(sized -> sized.effect().apply(sized.size(), altered));
    Optional<Observed> observed =
        builtStates.containsKey(state)
            ? observed(altered, state, builtStates.get(state))
            : Observed.of(altered, state);
    linesSolved.add(
        observed
            .map(Observed::linesSolved)
            .orElse((long) STEPS_OF_NONE * job.network().lines().size()));
    for (int i : byState.getOrDefault(state, List.of())) {
      observed.ifPresent(o -> values[i] = readables.get(i).valueIn(o).orElse(Double.NaN));
    }
    if (state.equals(RUNNING)) {
      for (int i = 0; i < returns.size(); i++) {
        LineName line = returns.get(i);
        int index = size() + i;
        observed.ifPresent(o -> values[index] = o.lineEndFlowM3PerS(line));
      }
    }
  }

  /** What everything would read if the pond fell faster by that, running or not. */
  public double[] withPondFalling(double mPerS, double[] values) {
    double[] more = values.clone();
    for (int i = 0; i < size(); i++) {
      if (PondFall.isReadIn(readables.get(i))) {
        more[i] += mPerS;
      }
    }
    return more;
  }

  private static Optional<Observed> observed(Alteration altered, When state, Observed asBuilt) {
    return altered.leavesNetwork()
        ? Optional.of(asBuilt.with(altered, state))
        : Observed.of(altered, state, asBuilt);
  }

  /** What all predictions took so far: Newton steps times lines. */
  public long linesSolved() {
    return linesSolved.sum();
  }

  /** Whether somebody sees by the readable of a number that a fall is weak. */
  public boolean showsWeakness(int index) {
    return Arrays.stream(showWeakness).anyMatch(i -> i == index);
  }

  /** Whether anything flows as built by which somebody could see that it is weak. */
  public boolean canBeWeak() {
    return Arrays.stream(showWeakness).anyMatch(i -> asBuilt[i] > 0);
  }

  /**
   * Whether somebody calls: a tenth is lost of the flow or head of a fall, of what an outlet gives
   * or a return brings.
   */
  public boolean isCalledFor(double[] values) {
    for (int i : showWeakness) {
      if (asBuilt[i] > 0 && values[i] <= WEAK_SHARE * asBuilt[i]) {
        return true;
      }
    }
    return false;
  }
}
