package rillwright.solver.study.diagnosis.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.inference.Diagnosis;
import rillwright.solver.study.diagnosis.inference.Explanation;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.reading.Reading;

/** Tries the inference on simulated calls. */
public final class Trial {
  /** Readings of a call; one more is taken to see what it is worth. */
  public static final int READINGS = 4;

  private static final double LEAST_RATIO = 1e-12;

  private Trial() {}

  /**
   * The scores of calls, taken from the jobs in turn; the same seed gives the same calls.
   *
   * @param calls how many
   */
  public static List<CallScore> run(List<TrialJob> jobs, int calls, long seed) {
    return IntStream.range(0, calls)
        .parallel()
        .mapToObj(
            number -> {
              TrialJob job = jobs.get(number % jobs.size());
              Random dice = dice(seed, number);
              return score(job, new CallMaker(job, dice).make(READINGS));
            })
        .toList();
  }

  /**
   * How well two faults at once are found, on calls taken from the jobs in turn.
   *
   * @param calls how many
   */
  public static PairFigures runPairs(List<TrialJob> jobs, int calls, long seed) {
    List<boolean[]> found =
        IntStream.range(0, calls)
            .parallel()
            .mapToObj(number -> pairScore(jobs.get(number % jobs.size()), dice(seed, number)))
            .toList();
    return new PairFigures(calls, share(found, 0), share(found, 1), share(found, 2));
  }

  private static double share(List<boolean[]> found, int what) {
    return found.stream().mapToDouble(call -> call[what] ? 1 : 0).average().orElse(0);
  }

  private static boolean[] pairScore(TrialJob job, Random dice) {
    CallMaker maker = new CallMaker(job, dice);
    CallMaker.PairCall call = maker.makePair(READINGS);
    Set<CauseId> truth = Set.of(call.one().id(), call.other().id());
    Diagnosis diagnosis = job.diagnostician().explain(call.readings(), cause -> 1);
    boolean listed =
        diagnosis.pairs().stream()
            .anyMatch(
                pair -> truth.equals(Set.of(pair.one().cause().id(), pair.other().cause().id())));
    boolean member =
        diagnosis.firstGroup().stream().anyMatch(one -> truth.contains(one.cause().id()));
    Diagnosis single = job.diagnostician().explain(maker.make(READINGS).readings(), cause -> 1);
    return new boolean[] {listed || member, listed, single.pairsLead()};
  }

  /** Dice of a call: seeds that lie near each other must not give calls that are alike. */
  private static Random dice(long seed, int number) {
    SplittableRandom seeds = new SplittableRandom(seed);
    long own = 0;
    for (int i = 0; i <= number; i++) {
      own = seeds.nextLong();
    }
    return new Random(own);
  }

  private static CallScore score(TrialJob job, SimulatedCall call) {
    Diagnosis diagnosis = explain(job, call.readings());
    CauseId truth = call.truth().id();
    double before = probability(diagnosis, truth);
    NextReading advice =
        diagnosis.next().stream()
            .filter(next -> call.canRead(next.what()))
            .findFirst()
            .orElseThrow();
    double advised = after(job, call, call.readingOf(advice.what()));
    double random = after(job, call, call.measured().get(0));
    double twoAdvised = afterAnother(job, call, call.readingOf(advice.what()));
    double twoRandom = after(job, call, call.other().get(0), call.other().get(1));
    return new CallScore(
        truth.cause(),
        diagnosis.firstGroup().stream().anyMatch(member -> member.cause().id().equals(truth)),
        diagnosis.firstGroup().size(),
        call.truth().prior(),
        before,
        advised,
        random,
        twoAdvised,
        twoRandom,
        advice.bits(),
        Math.log(Math.max(advised, LEAST_RATIO) / Math.max(before, LEAST_RATIO)) / Math.log(2),
        diagnosis.causes().stream()
            .map(
                entry -> new CallScore.Entry(entry.probability(), entry.cause().id().equals(truth)))
            .toList());
  }

  private static Diagnosis explain(TrialJob job, List<Reading> readings) {
    return job.diagnostician().explainSingly(readings, cause -> 1);
  }

  /** How likely the truth is after an advised reading and the one that is advised then. */
  private static double afterAnother(TrialJob job, SimulatedCall call, Reading advised) {
    List<Reading> readings = new ArrayList<>(call.readings());
    readings.add(advised);
    return explain(job, readings).next().stream()
        .filter(next -> call.canRead(next.what()))
        .findFirst()
        .map(next -> after(job, call, advised, call.readingOf(next.what())))
        .orElseGet(() -> after(job, call, advised));
  }

  private static double after(TrialJob job, SimulatedCall call, Reading... more) {
    List<Reading> readings = new ArrayList<>(call.readings());
    readings.addAll(List.of(more));
    return probability(job.diagnostician().explainBriefly(readings, cause -> 1), call.truth().id());
  }

  private static double probability(Diagnosis diagnosis, CauseId cause) {
    return diagnosis.causes().stream()
        .filter(entry -> entry.cause().id().equals(cause))
        .mapToDouble(Explanation::probability)
        .sum();
  }
}
