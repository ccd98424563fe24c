package rillwright.solver.study.diagnosis.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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
    double random = after(job, call, call.other().get(0));
    return new CallScore(
        truth.cause(),
        diagnosis.firstGroup().stream().anyMatch(member -> member.cause().id().equals(truth)),
        diagnosis.firstGroup().size(),
        call.truth().prior(),
        before,
        advised,
        random,
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

  private static double after(TrialJob job, SimulatedCall call, Reading reading) {
    List<Reading> readings = new ArrayList<>(call.readings());
    readings.add(reading);
    return probability(job.diagnostician().explainBriefly(readings, cause -> 1), call.truth().id());
  }

  private static double probability(Diagnosis diagnosis, CauseId cause) {
    return diagnosis.causes().stream()
        .filter(entry -> entry.cause().id().equals(cause))
        .mapToDouble(Explanation::probability)
        .sum();
  }
}
