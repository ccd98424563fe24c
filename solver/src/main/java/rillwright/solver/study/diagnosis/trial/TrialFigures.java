package rillwright.solver.study.diagnosis.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The figures of a trial.
 *
 * @param calls how many calls
 * @param groupHolds share of calls in which the first group held the truth
 * @param groupSize mean size of the first group
 * @param gainNats mean ln p(truth) − ln prior(truth), p of 0.005 at worst
 * @param truthBefore mean probability of the truth by the readings
 * @param truthAfterAdvice the same after the reading that was advised
 * @param truthAfterRandom the same after a random reading
 * @param truthAfterTwoAdvised the same after following the advice twice, looks among it
 * @param truthAfterTwoRandom the same after two random readings or looks
 * @param surplusBits mean of realised less promised bits of the advised reading
 * @param calibration stated against come true, by bins
 */
public record TrialFigures(
    int calls,
    double groupHolds,
    double groupSize,
    double gainNats,
    double truthBefore,
    double truthAfterAdvice,
    double truthAfterRandom,
    double truthAfterTwoAdvised,
    double truthAfterTwoRandom,
    double surplusBits,
    List<Bin> calibration) {
  private static final double LEAST_PROBABILITY = 0.005;
  private static final double[] EDGES = {0.05, 0.2, 0.4, 0.6, 0.8, 1};

  public TrialFigures {
    calibration = List.copyOf(calibration);
  }

  /**
   * One bin of the calibration.
   *
   * @param from least probability in it
   * @param to greatest
   * @param entries how many stated probabilities lie in it
   * @param stated their mean
   * @param cameTrue share that came true
   * @param deviations |Σ(hit − p)| / √Σp(1 − p)
   */
  public record Bin(
      double from, double to, int entries, double stated, double cameTrue, double deviations) {}

  /** The figures of some scores. */
  public static TrialFigures of(List<CallScore> scores) {
    List<Bin> bins = new ArrayList<>();
    for (int b = 0; b + 1 < EDGES.length; b++) {
      bins.add(bin(scores, EDGES[b], EDGES[b + 1]));
    }
    return new TrialFigures(
        scores.size(),
        mean(scores, score -> score.groupHolds() ? 1 : 0),
        mean(scores, CallScore::groupSize),
        mean(scores, TrialFigures::gain),
        mean(scores, CallScore::truth),
        mean(scores, CallScore::afterAdvice),
        mean(scores, CallScore::afterRandom),
        mean(scores, CallScore::afterTwoAdvised),
        mean(scores, CallScore::afterTwoRandom),
        mean(scores, score -> score.realisedBits() - score.promisedBits()),
        bins);
  }

  private static double gain(CallScore score) {
    return Math.log(Math.max(LEAST_PROBABILITY, score.truth())) - Math.log(score.prior());
  }

  private static double mean(List<CallScore> scores, ToDoubleFunction<CallScore> what) {
    return scores.stream().mapToDouble(what).average().orElseThrow();
  }

  private static Bin bin(List<CallScore> scores, double from, double to) {
    int entries = 0;
    double stated = 0;
    double hits = 0;
    double variance = 0;
    for (CallScore score : scores) {
      for (CallScore.Entry entry : score.entries()) {
        double p = entry.probability();
        boolean inside = p >= from && (p < to || to == 1);
        if (inside) {
          entries++;
          stated += p;
          hits += entry.hit() ? 1 : 0;
          variance += p * (1 - p);
        }
      }
    }
    double count = Math.max(1, entries);
    double deviations = variance > 0 ? Math.abs(hits - stated) / Math.sqrt(variance) : 0;
    return new Bin(from, to, entries, stated / count, hits / count, deviations);
  }
}
