package rillwright.solver.study.diagnosis.cause;

import rillwright.solver.study.diagnosis.job.Alteration;

/** What a cause at a place makes of a job. */
@FunctionalInterface
public interface Effect {
  /**
   * Makes it so.
   *
   * @param size how large it is; of no account to a cause without sizes
   */
  void apply(double size, Alteration job);
}
