package rillwright.cli.study.weak;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.inference.Diagnosis;
import rillwright.solver.study.diagnosis.inference.Explanation;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.reading.Measurand;

/**
 * Why a fall is weak.
 *
 * @param job that it is about
 * @param scope of the job as built
 * @param visit what was read and seen
 * @param diagnosis what explains it
 * @param slight whether faults count that take less than a tenth off everything, because no other
 *     fits
 */
public record WeakAnswer(Job job, Scope scope, Visit visit, Diagnosis diagnosis, boolean slight)
    implements Answer {

  /** Whether there is a pump in the job. */
  public boolean isPumped() {
    return scope.job().network().isPumped();
  }

  /** Where a pond's water is lost, where its fall was read. */
  public Optional<PondLoss> pondLoss() {
    return PondLoss.of(scope, diagnosis.readings());
  }

  /** What a readable would be by a cause; empty where it tells nothing. */
  public OptionalDouble predicted(Measurand readable, CauseId cause) {
    for (int i = 0; i < diagnosis.readings().size(); i++) {
      if (diagnosis.readings().get(i).what().equals(readable)) {
        for (Explanation explanation : diagnosis.causes()) {
          if (explanation.cause().id().equals(cause)) {
            return explanation.predicted().get(i);
          }
        }
      }
    }
    for (NextReading next : diagnosis.next()) {
      if (next.what().equals(readable)) {
        for (NextReading.Expected expected : next.predicted()) {
          if (expected.cause().id().equals(cause)) {
            return expected.value();
          }
        }
      }
    }
    return OptionalDouble.empty();
  }

  /** What a readable would be by a pair, by its number from 0; empty where it tells nothing. */
  public OptionalDouble predicted(Measurand readable, int pair) {
    for (int i = 0; i < diagnosis.readings().size(); i++) {
      if (diagnosis.readings().get(i).what().equals(readable)) {
        return diagnosis.pairs().get(pair).predicted().get(i);
      }
    }
    return diagnosis.next().stream()
        .filter(next -> next.what().equals(readable))
        .map(next -> next.byPairs().get(pair))
        .findFirst()
        .orElse(OptionalDouble.empty());
  }
}
