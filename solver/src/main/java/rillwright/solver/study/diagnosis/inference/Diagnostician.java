package rillwright.solver.study.diagnosis.inference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.evidence.Belief;
import rillwright.solver.study.diagnosis.evidence.Hypothesis;
import rillwright.solver.study.diagnosis.evidence.Likelihood;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.evidence.SweptCause;
import rillwright.solver.study.diagnosis.evidence.SweptCause.Unnoticed;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.pair.ListedPairs;
import rillwright.solver.study.diagnosis.pair.PairSearch;
import rillwright.solver.study.diagnosis.pair.SweptPair;
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

  private final Scope scope;
  private final List<Hypothesis> hypotheses;

  /** Causes that were not swept, because the job is large: they may be what is not described. */
  private final List<Cause> untried;

  /** Whether sizes count that weaken nothing by a tenth. */
  private final boolean unnoticed;

  Diagnostician(Scope scope, Sweeping causes, boolean unnoticed) {
    this.scope = scope;
    this.hypotheses = causes.hypotheses();
    this.untried = causes.untried();
    this.unnoticed = unnoticed;
  }

  /** The same one who counts all sizes. */
  public Diagnostician withSlight() {
    List<Hypothesis> slight = hypotheses.stream().map(Hypothesis::withSlight).toList();
    return new Diagnostician(scope, new Sweeping(slight, untried), true);
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
    Scope scope = Scope.of(job, asked);
    Unnoticed unnoticed = sizes == Sizes.ALL ? Unnoticed.COUNTS : Unnoticed.LEFT_OUT;
    return new Diagnostician(
        scope, Sweeping.of(scope, table, unnoticed, progress), sizes == Sizes.ALL);
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
    return explain(readings, signs, Asked.ALL);
  }

  /** The same without what to read next. */
  public Diagnosis explainBriefly(List<Reading> readings, ToDoubleFunction<Cause> signs) {
    return explain(readings, signs, Asked.BRIEFLY);
  }

  /** The same with what to read next, as if only one cause could be at work. */
  public Diagnosis explainSingly(List<Reading> readings, ToDoubleFunction<Cause> signs) {
    return explain(readings, signs, Asked.SINGLY);
  }

  private enum Asked {
    BRIEFLY,
    SINGLY,
    ALL
  }

  private Diagnosis explain(List<Reading> readings, ToDoubleFunction<Cause> signs, Asked asked) {
    if (!canExplain()) {
      throw new IllegalStateException("no cause that is possible has a prior above 0");
    }
    Likelihood likelihood =
        new Likelihood(
            scope, readings.stream().filter(it -> scope.asBuilt(it.what()).isPresent()).toList());
    ToDoubleFunction<Cause> logPrior = cause -> logPrior(cause, signs);
    List<Belief> beliefs = hypotheses.stream().map(h -> h.given(likelihood)).toList();
    double[] logWeight = new double[beliefs.size()];
    for (int c = 0; c < logWeight.length; c++) {
      logWeight[c] =
          logPrior.applyAsDouble(hypotheses.get(c).cause()) + beliefs.get(c).logEvidence();
    }
    double[] probability = Likelihood.normalised(logWeight);
    List<Integer> order =
        IntStream.range(0, logWeight.length)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer c) -> -probability[c]))
            .toList();
    List<Explanation> causes = new ArrayList<>();
    for (int c : order) {
      causes.add(
          new Explanation(
              hypotheses.get(c).cause(),
              probability[c],
              beliefs.get(c).size(),
              beliefs.get(c).choice(),
              predicted(readings, beliefs.get(c))));
    }
    int group = firstGroup(causes);
    List<SweptPair> found =
        asked == Asked.ALL && likelihood.count() > 0
            ? new PairSearch(scope, likelihood, logPrior)
                .find(combinable(), logWeight[order.get(0)], unnoticed)
            : List.of();
    ListedPairs pairs = ListedPairs.of(found, logWeight, it -> predicted(readings, it), likelihood);
    Advice advice =
        new Advice(
            scope,
            order.stream().map(c -> hypotheses.get(c).cause()).toList(),
            order.stream().map(beliefs::get).toList(),
            order.stream().mapToDouble(c -> probability[c]).toArray(),
            pairs);
    List<NextReading> next = asked == Asked.BRIEFLY ? List.of() : advice.next(readings);
    return new Diagnosis(
        readings,
        causes,
        causes.subList(0, group),
        advice.separating(next, group),
        next,
        pairs.explanations(),
        pairs.lead(),
        untried.size());
  }

  /** Logarithm of prior times signs; what was not tried counts to what no cause describes. */
  private double logPrior(Cause cause, ToDoubleFunction<Cause> signs) {
    double more = 0;
    if (cause.isUnnamed()) {
      for (Cause left : untried) {
        more += left.prior() * signs.applyAsDouble(left);
      }
    }
    return more > 0
        ? Math.log(cause.prior() * signs.applyAsDouble(cause) + more)
        : Math.log(cause.prior()) + Math.log(signs.applyAsDouble(cause));
  }

  private List<OptionalDouble> predicted(List<Reading> readings, Belief belief) {
    return readings.stream().map(reading -> belief.mean(scope.indexOf(reading.what()))).toList();
  }

  /** The causes that may be at work together with others. */
  private List<SweptCause> combinable() {
    List<SweptCause> swept = new ArrayList<>();
    for (Hypothesis hypothesis : hypotheses) {
      hypothesis
          .swept()
          .filter(one -> one.cause().prior() > 0 && !one.cause().mayGoUnnoticed())
          .ifPresent(swept::add);
    }
    return swept;
  }

  private static int firstGroup(List<Explanation> causes) {
    double held = 0;
    int count = 0;
    while (count < causes.size() && held < FIRST_GROUP_HOLDS) {
      held += causes.get(count).probability();
      count++;
    }
    return count;
  }
}
