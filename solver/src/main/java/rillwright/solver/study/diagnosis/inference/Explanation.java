package rillwright.solver.study.diagnosis.inference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.cause.Cause;

/**
 * A cause with how likely it is in the light of the readings.
 *
 * @param cause which and where
 * @param probability of all causes' 1
 * @param size how large it would be; empty without sizes or if it cannot be
 * @param choice which of several it would be, most likely; empty if it is no choice
 * @param predicted what each reading would have been, in the order of the readings; empty where it
 *     tells nothing
 */
public record Explanation(
    Cause cause,
    double probability,
    OptionalDouble size,
    Optional<String> choice,
    List<OptionalDouble> predicted) {
  public Explanation {
    predicted = List.copyOf(predicted);
  }
}
