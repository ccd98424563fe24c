package rillwright.cli.report.conditions;

import java.util.Optional;

/**
 * What a study tells of a project in one condition.
 *
 * @param named the condition
 * @param answer of the study; empty if there is no balance then
 * @param noBalance why there is none; empty if there is one
 */
public record Case<A>(NamedCondition named, Optional<A> answer, Optional<String> noBalance) {

  /** The condition's name. */
  public String condition() {
    return named.name();
  }
}
