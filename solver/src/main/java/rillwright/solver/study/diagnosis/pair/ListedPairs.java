package rillwright.solver.study.diagnosis.pair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.solver.study.diagnosis.evidence.Belief;
import rillwright.solver.study.diagnosis.evidence.Likelihood;

/**
 * The pairs of causes that are worth a place in the answer: likelier than the likeliest single
 * cause, or likely in themselves.
 *
 * @param explanations of the pairs, likeliest first
 * @param beliefs of them, in the same order
 * @param ofSingles what all single causes share of the probability of all, 1 without pairs
 * @param lead whether they are far likelier than any single cause
 */
public record ListedPairs(
    List<PairExplanation> explanations, List<Belief> beliefs, double ofSingles, boolean lead) {
  private static final double LIKELY = 0.2;
  private static final double FAR = 5;

  public ListedPairs {
    explanations = List.copyOf(explanations);
    beliefs = List.copyOf(beliefs);
  }

  /**
   * Those of what was found.
   *
   * @param found pairs, likeliest first
   * @param singles logarithms of the weights of all single causes
   * @param predicted what each reading would have been
   */
  public static ListedPairs of(
      List<SweptPair> found,
      double[] singles,
      Function<Belief, List<OptionalDouble>> predicted,
      Likelihood likelihood) {
    double[] all = Arrays.copyOf(singles, singles.length + found.size());
    for (int p = 0; p < found.size(); p++) {
      all[singles.length + p] = found.get(p).logWeight();
    }
    double[] probability = Likelihood.normalised(all);
    double[] ofSingles = Arrays.copyOf(probability, singles.length);
    double best = Arrays.stream(ofSingles).max().orElse(0);
    List<PairExplanation> explanations = new ArrayList<>();
    List<Belief> beliefs = new ArrayList<>();
    double held = 0;
    for (int p = 0; p < found.size(); p++) {
      double own = probability[singles.length + p];
      if ((own > best || own >= LIKELY) && likelihood.fits(found.get(p).best())) {
        Belief belief = found.get(p).belief();
        explanations.add(found.get(p).explanation(own, predicted.apply(belief)));
        beliefs.add(belief);
        held += own;
      }
    }
    return new ListedPairs(
        explanations, beliefs, Arrays.stream(ofSingles).sum(), held > FAR * best);
  }
}
