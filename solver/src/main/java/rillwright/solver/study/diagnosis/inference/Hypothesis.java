package rillwright.solver.study.diagnosis.inference;

import java.util.List;
import java.util.Optional;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.reading.Reading;

/** A cause that may be at work, with what it predicts. */
interface Hypothesis {

  /** The cause. */
  Cause cause();

  /** Whether it can be at work at all in this job. */
  default boolean isPossible() {
    return true;
  }

  /** What is believed of it when something was read. */
  Belief given(List<Reading> readings);

  /** The cause swept over its sizes; empty if it predicts nothing. */
  default Optional<SweptCause> swept() {
    return Optional.empty();
  }
}
