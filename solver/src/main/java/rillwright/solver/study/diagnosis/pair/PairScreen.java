package rillwright.solver.study.diagnosis.pair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.evidence.Likelihood;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.evidence.StudentT;
import rillwright.solver.study.diagnosis.evidence.SweptCause;

/**
 * The pairs of faults that are worth computing through. Each fault's changes of the readings are
 * added up, at sizes that lie close where much changes; how far one fault alters what the other
 * does is let pass as an error, a share of the lesser change.
 */
public final class PairScreen {
  private static final int MANY_PAIRS = 3000;
  private static final int SAMPLES = 18;
  private static final int SAMPLES_OF_MANY = 8;

  /** How far the changes of two faults do not add up, as a share of the lesser. */
  private static final double INTERPLAY = 0.3;

  private final Scope scope;
  private final Likelihood likelihood;
  private final ToDoubleFunction<Cause> logPrior;

  public PairScreen(Scope scope, Likelihood likelihood, ToDoubleFunction<Cause> logPrior) {
    this.scope = scope;
    this.likelihood = likelihood;
    this.logPrior = logPrior;
  }

  /**
   * Two faults at sizes at which the readings may be explained.
   *
   * @param atOne share of the one's range, or which of several it is
   * @param atOther the same of the other
   * @param logPrior of both
   * @param logScore upper estimate of prior times likelihood
   */
  public record Candidate(
      SweptCause one,
      double atOne,
      SweptCause other,
      double atOther,
      double logPrior,
      double logScore) {}

  /** The best pairs, best first. */
  public List<Candidate> best(List<SweptCause> swept, int count) {
    int samples = swept.size() * (swept.size() - 1) / 2 > MANY_PAIRS ? SAMPLES_OF_MANY : SAMPLES;
    List<int[]> points = swept.stream().map(cause -> cause.samples(samples)).toList();
    List<double[][]> changes = new ArrayList<>();
    for (int c = 0; c < swept.size(); c++) {
      changes.add(changes(swept.get(c), points.get(c)));
    }
    List<Candidate> all = new ArrayList<>();
    for (int a = 0; a < swept.size(); a++) {
      for (int b = a + 1; b < swept.size(); b++) {
        if (areApart(swept.get(a).cause().id(), swept.get(b).cause().id())) {
          all.add(
              candidate(
                  swept.get(a),
                  points.get(a),
                  changes.get(a),
                  swept.get(b),
                  points.get(b),
                  changes.get(b)));
        }
      }
    }
    all.sort(Comparator.comparingDouble((Candidate candidate) -> -candidate.logScore()));
    return all.subList(0, Math.min(count, all.size()));
  }

  /** Two faults in one part are one. */
  private static boolean areApart(CauseId one, CauseId other) {
    return !(one.at().equals(other.at()) && one.part().equals(other.part()));
  }

  /** What each reading is off as built, by point and reading. */
  private double[][] changes(SweptCause cause, int[] points) {
    double[][] changes = new double[points.length][likelihood.count()];
    for (int i = 0; i < points.length; i++) {
      for (int r = 0; r < likelihood.count(); r++) {
        int index = likelihood.index(r);
        changes[i][r] = cause.values(points[i])[index] - scope.asBuilt(index);
      }
    }
    return changes;
  }

  private Candidate candidate(
      SweptCause one,
      int[] pointsOfOne,
      double[][] changesOfOne,
      SweptCause other,
      int[] pointsOfOther,
      double[][] changesOfOther) {
    double best = Double.NEGATIVE_INFINITY;
    int bestOne = 0;
    int bestOther = 0;
    for (int i = 0; i < pointsOfOne.length; i++) {
      for (int j = 0; j < pointsOfOther.length; j++) {
        double log = log(changesOfOne[i], changesOfOther[j]);
        if (log > best) {
          best = log;
          bestOne = i;
          bestOther = j;
        }
      }
    }
    double prior = logPrior.applyAsDouble(one.cause()) + logPrior.applyAsDouble(other.cause());
    return new Candidate(
        one,
        one.share(pointsOfOne[bestOne]),
        other,
        other.share(pointsOfOther[bestOther]),
        prior,
        prior + best);
  }

  private double log(double[] one, double[] other) {
    double log = 0;
    for (int r = 0; r < one.length; r++) {
      double predicted = scope.asBuilt(likelihood.index(r)) + one[r] + other[r];
      double deviation = likelihood.deviation(r, predicted);
      if (Double.isNaN(predicted)) {
        log += likelihood.log(r, predicted);
        continue;
      }
      double interplay = INTERPLAY * Math.min(Math.abs(one[r]), Math.abs(other[r]));
      double off = Math.abs(likelihood.value(r) - predicted);
      log += StudentT.logDensity(off / Math.hypot(deviation, interplay)) - Math.log(deviation);
    }
    return log;
  }
}
