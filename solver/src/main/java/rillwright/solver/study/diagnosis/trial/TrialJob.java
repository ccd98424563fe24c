package rillwright.solver.study.diagnosis.trial;

import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.inference.Diagnostician;

/**
 * A job to try the inference on.
 *
 * @param name of the job
 * @param causes its causes
 * @param diagnostician who knows it
 */
public record TrialJob(String name, CauseTable causes, Diagnostician diagnostician) {
  /** Whether enough can be read for a simulated call. */
  public boolean isReadable() {
    return diagnostician.scope().readables().stream().filter(it -> !CallMaker.isLook(it)).count()
            > Trial.READINGS
        && diagnostician.scope().canBeWeak();
  }
}
