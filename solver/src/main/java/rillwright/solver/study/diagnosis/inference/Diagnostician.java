package rillwright.solver.study.diagnosis.inference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Steps;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.inference.NextReading.Expected;
import rillwright.solver.study.diagnosis.inference.SweptCause.Unnoticed;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Reading;

/**
 * Finds what explains readings at a job. The causes are swept once; any number of readings can then
 * be asked about.
 *
 * <p><b>Method.</b> A reading has a standard deviation of half its tolerance at the predicted
 * value, and one per cent of the as-built value for the model, and Student's t-distribution. The
 * evidence of a cause is the likelihood of all readings integrated over its sizes. Posterior =
 * prior × signs × evidence.
 */
public final class Diagnostician {
  /** The first group holds this much. */
  private static final double FIRST_GROUP_HOLDS = 0.8;

  /** Fewer bits than this tell nothing apart. */
  private static final double TELLS_APART_BITS = 0.02;

  private final Scope scope;
  private final List<Hypothesis> hypotheses;

  private Diagnostician(Scope scope, List<Hypothesis> hypotheses) {
    this.scope = scope;
    this.hypotheses = hypotheses;
  }

  /** Which sizes of causes count. */
  public enum Sizes {
    /** Those for which somebody would call. */
    CALLED_FOR,
    /** All. */
    ALL
  }

  /**
   * One who knows a job.
   *
   * @param asked readables that will be asked about, besides all that one would think of
   */
  public static Diagnostician of(
      AsBuilt job, CauseTable table, Collection<Measurand> asked, Sizes sizes) {
    return of(job, table, asked, sizes, Progress.UNSEEN);
  }

  /**
   * The same, watched.
   *
   * @param progress receives how many causes are swept
   */
  public static Diagnostician of(
      AsBuilt job, CauseTable table, Collection<Measurand> asked, Sizes sizes, Progress progress) {
    Steps steps = new Steps(progress, table.causes().size());
    Scope scope = Scope.of(job, asked);
    Unnoticed unnoticed = sizes == Sizes.ALL ? Unnoticed.COUNTS : Unnoticed.LEFT_OUT;
    List<Hypothesis> hypotheses =
        table.causes().parallelStream()
            .map(cause -> hypothesis(cause, scope, unnoticed, steps))
            .toList();
    return new Diagnostician(scope, hypotheses);
  }

  private static Hypothesis hypothesis(Cause cause, Scope scope, Unnoticed unnoticed, Steps steps) {
    steps.done(0);
    Hypothesis hypothesis =
        cause
            .effect()
            .<Hypothesis>map(effect -> SweptCause.of(cause, effect, scope, unnoticed))
            .orElseGet(() -> new AnyReading(cause, scope));
    steps.done(1);
    return hypothesis;
  }

  /** Everything that can be read at the job. */
  public Scope scope() {
    return scope;
  }

  /** Whether any cause that is possible at this job has a prior above 0: else nothing explains. */
  public boolean canExplain() {
    return hypotheses.stream().anyMatch(one -> one.cause().prior() > 0 && one.isPossible());
  }

  /**
   * What explains some readings. One of which nothing tells what it would be as built counts for
   * nothing.
   *
   * @param signs by what factor signs change how likely a cause is
   * @throws IllegalStateException unless {@link #canExplain}
   */
  public Diagnosis explain(List<Reading> readings, ToDoubleFunction<Cause> signs) {
    return explain(readings, signs, true);
  }

  /** The same without what to read next. */
  public Diagnosis explainBriefly(List<Reading> readings, ToDoubleFunction<Cause> signs) {
    return explain(readings, signs, false);
  }

  private Diagnosis explain(List<Reading> readings, ToDoubleFunction<Cause> signs, boolean advise) {
    List<Reading> telling =
        readings.stream().filter(reading -> scope.asBuilt(reading.what()).isPresent()).toList();
    List<Belief> beliefs = hypotheses.stream().map(h -> h.given(telling)).toList();
    double[] probability = posterior(beliefs, signs);
    List<Integer> order = new ArrayList<>();
    for (int c = 0; c < hypotheses.size(); c++) {
      order.add(c);
    }
    order.sort(Comparator.comparingDouble((Integer c) -> -probability[c]));
    List<Explanation> causes = new ArrayList<>();
    for (int c : order) {
      List<OptionalDouble> predicted =
          readings.stream()
              .map(reading -> beliefs.get(c).mean(scope.indexOf(reading.what())))
              .toList();
      causes.add(
          new Explanation(
              hypotheses.get(c).cause(),
              probability[c],
              beliefs.get(c).size(),
              beliefs.get(c).choice(),
              predicted));
    }
    List<Integer> group = firstGroup(order, probability);
    List<NextReading> next = advise ? next(readings, beliefs, order, probability) : List.of();
    return new Diagnosis(
        readings,
        causes,
        causes.subList(0, group.size()),
        separatedBy(next, beliefs, group, probability),
        next);
  }

  /**
   * Pairs of causes that explain some readings together, likeliest first, where no single one does:
   * where the diagnosis {@link Diagnosis#isUnexplained}. Only pairs by which every reading fits
   * that tells anything; else none.
   */
  public List<PairExplanation> pairs(Diagnosis diagnosis, ToDoubleFunction<Cause> signs) {
    if (!diagnosis.isUnexplained()) {
      return List.of();
    }
    List<SweptCause> swept = new ArrayList<>();
    for (Hypothesis hypothesis : hypotheses) {
      hypothesis
          .swept()
          .filter(one -> one.isPossible() && !one.cause().mayGoUnnoticed())
          .ifPresent(swept::add);
    }
    return new PairSearch(scope, swept, diagnosis.readings(), signs).find();
  }

  private double[] posterior(List<Belief> beliefs, ToDoubleFunction<Cause> signs) {
    if (!canExplain()) {
      throw new IllegalStateException("no cause that is possible has a prior above 0");
    }
    double[] log = new double[beliefs.size()];
    double highest = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < log.length; c++) {
      Cause cause = hypotheses.get(c).cause();
      log[c] =
          Math.log(cause.prior())
              + Math.log(signs.applyAsDouble(cause))
              + beliefs.get(c).logEvidence();
      highest = Math.max(highest, log[c]);
    }
    double sum = 0;
    for (int c = 0; c < log.length; c++) {
      log[c] = Math.exp(log[c] - highest);
      sum += log[c];
    }
    for (int c = 0; c < log.length; c++) {
      log[c] /= sum;
    }
    return log;
  }

  private static List<Integer> firstGroup(List<Integer> order, double[] probability) {
    List<Integer> group = new ArrayList<>();
    double held = 0;
    for (int c : order) {
      if (held < FIRST_GROUP_HOLDS) {
        group.add(c);
        held += probability[c];
      }
    }
    return group;
  }

  private List<NextReading> next(
      List<Reading> readings, List<Belief> beliefs, List<Integer> order, double[] probability) {
    Set<Measurand> taken = new HashSet<>();
    readings.forEach(reading -> taken.add(reading.what()));
    Information information = new Information(scope);
    return scope.readables().stream()
        .filter(readable -> !taken.contains(readable))
        .map(
            readable -> {
              int index = scope.indexOf(readable);
              return new NextReading(
                  readable,
                  information.bits(index, beliefs, probability),
                  order.stream()
                      .map(c -> new Expected(hypotheses.get(c).cause(), beliefs.get(c).mean(index)))
                      .toList());
            })
        .sorted(Comparator.comparingDouble((NextReading reading) -> -reading.bits()))
        .toList();
  }

  private Optional<NextReading> separatedBy(
      List<NextReading> next, List<Belief> beliefs, List<Integer> group, double[] probability) {
    Information information = new Information(scope);
    List<Belief> members = group.stream().map(beliefs::get).toList();
    double[] shares = group.stream().mapToDouble(c -> probability[c]).toArray();
    NextReading best = null;
    double most = TELLS_APART_BITS;
    for (NextReading reading : next) {
      double bits = information.bits(scope.indexOf(reading.what()), members, shares);
      if (bits > most) {
        most = bits;
        best = new NextReading(reading.what(), bits, reading.predicted().subList(0, group.size()));
      }
    }
    return Optional.ofNullable(best);
  }
}
