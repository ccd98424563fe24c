package rillwright.cli.study.condition;

import java.util.Optional;
import rillwright.solver.steady.NoBalance;

/**
 * What a study tells of a project in one condition.
 *
 * @param named the condition
 * @param answer of the study; empty if there is no balance then
 * @param noBalance why there is none; empty if there is one
 * @param <A> what the study answers
 */
public record Case<A>(
    NamedCondition named, Optional<A> answer, Optional<NoBalance.Reason> noBalance) {

  /** The condition's name. */
  public String condition() {
    return named.name();
  }
}
