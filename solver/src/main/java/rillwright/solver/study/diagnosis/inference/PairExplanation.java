package rillwright.solver.study.diagnosis.inference;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.cause.Cause;

/**
 * Two causes at work at once.
 *
 * @param one the one
 * @param sizeOfOne how large it would be; empty without sizes
 * @param other the other
 * @param sizeOfOther how large it would be; empty without sizes
 * @param predicted what each reading would have been, in the order of the readings
 */
public record PairExplanation(
    Cause one,
    OptionalDouble sizeOfOne,
    Cause other,
    OptionalDouble sizeOfOther,
    List<OptionalDouble> predicted) {
  public PairExplanation {
    predicted = List.copyOf(predicted);
  }
}
