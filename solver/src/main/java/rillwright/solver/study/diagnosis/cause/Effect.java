package rillwright.solver.study.diagnosis.cause;

import java.util.List;
import rillwright.solver.study.diagnosis.job.Alteration;

/** What a cause at a place makes of a job. */
@FunctionalInterface
public interface Effect {
  /**
   * Makes it so.
   *
   * @param size how large it is; of several choices which, from 0; of no account to a cause without
   *     either
   */
  void apply(double size, Alteration job);

  /** Whether it is anything at all at a size. */
  default boolean isThereAt(double size) {
    return true;
  }

  /** Rates at which its pond may fall besides, one of them; usually none. */
  default List<PondFall> pondFalls() {
    return List.of();
  }

  /** What it may be where it has no size but is one of several, each as likely; usually nothing. */
  default List<String> choices() {
    return List.of();
  }
}
