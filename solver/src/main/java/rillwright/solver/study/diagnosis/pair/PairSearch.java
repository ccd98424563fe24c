package rillwright.solver.study.diagnosis.pair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.evidence.Likelihood;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.evidence.SweptCause;

/**
 * Finds two causes that explain readings together: all pairs are screened, the best of them fitted,
 * the best of those computed through over their sizes.
 */
public final class PairSearch {
  private static final int FITTED = 40;
  private static final int SWEPT = 9;

  /** So many of them, the likeliest, are swept finely: others that read alike are listed too. */
  private static final int SWEPT_FINELY = 3;

  private static final int FINE_NODES = 7;
  private static final int ROUGH_NODES = 5;

  /** A pair that is less likely than the best single cause by so many nats is not computed. */
  private static final double HOPELESS_NATS = 4.5;

  private final Scope scope;
  private final Likelihood likelihood;
  private final ToDoubleFunction<Cause> logPrior;

  public PairSearch(Scope scope, Likelihood likelihood, ToDoubleFunction<Cause> logPrior) {
    this.scope = scope;
    this.likelihood = likelihood;
    this.logPrior = logPrior;
  }

  private record Fitted(PairScreen.Candidate pair, PairFit fit, double logWeight) {}

  /**
   * The likeliest pairs.
   *
   * @param bestSingle logarithm of prior times evidence of the likeliest single cause
   * @param slight whether pairs count that take less than a tenth off everything
   */
  public List<SweptPair> find(List<SweptCause> swept, double bestSingle, boolean slight) {
    List<Fitted> fitted =
        new PairScreen(scope, likelihood, logPrior)
            .best(swept, FITTED).parallelStream()
                .filter(candidate -> candidate.logScore() > bestSingle - HOPELESS_NATS)
                .map(this::fitted)
                .filter(fit -> fit.logWeight() > bestSingle - HOPELESS_NATS)
                .sorted(Comparator.comparingDouble((Fitted fit) -> -fit.logWeight()))
                .toList();
    List<SweptPair> pairs = new ArrayList<>();
    for (int i = 0; i < Math.min(SWEPT, fitted.size()); i++) {
      Fitted one = fitted.get(i);
      int nodes = i < SWEPT_FINELY ? FINE_NODES : ROUGH_NODES;
      SweptPair.of(scope, likelihood, one.pair(), one.fit(), slight, nodes).ifPresent(pairs::add);
    }
    pairs.sort(Comparator.comparingDouble((SweptPair pair) -> -pair.logWeight()));
    return pairs;
  }

  private Fitted fitted(PairScreen.Candidate candidate) {
    PairFit fit = PairFit.of(scope, likelihood, candidate);
    return new Fitted(candidate, fit, SweptPair.roughLogWeight(candidate, fit));
  }
}
