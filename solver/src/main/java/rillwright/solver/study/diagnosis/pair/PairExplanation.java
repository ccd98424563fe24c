package rillwright.solver.study.diagnosis.pair;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.cause.Cause;

/**
 * Two causes at work at once.
 *
 * @param one the one
 * @param other the other
 * @param probability of all single causes' and pairs' 1
 * @param predicted what each reading would have been, in the order of the readings
 */
public record PairExplanation(
    Member one, Member other, double probability, List<OptionalDouble> predicted) {
  public PairExplanation {
    predicted = List.copyOf(predicted);
  }

  /**
   * One of the two.
   *
   * @param cause which and where
   * @param size how large it would be; empty without sizes
   * @param choice which of several it would be; empty if it is no choice
   */
  public record Member(Cause cause, OptionalDouble size, Optional<String> choice) {}
}
