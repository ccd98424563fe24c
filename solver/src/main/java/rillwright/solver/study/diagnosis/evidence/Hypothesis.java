package rillwright.solver.study.diagnosis.evidence;

import java.util.Optional;
import rillwright.solver.study.diagnosis.cause.Cause;

/** A cause that may be at work, with what it predicts. */
public interface Hypothesis {

  /** The cause. */
  Cause cause();

  /** Whether it can be at work at all in this job. */
  default boolean isPossible() {
    return true;
  }

  /** What is believed of it when something was read. */
  Belief given(Likelihood likelihood);

  /** The same with the sizes that weaken nothing by a tenth. */
  default Hypothesis withSlight() {
    return this;
  }

  /** The cause swept over its sizes; empty if it predicts nothing. */
  default Optional<SweptCause> swept() {
    return Optional.empty();
  }
}
