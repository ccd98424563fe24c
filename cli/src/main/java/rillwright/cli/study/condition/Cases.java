package rillwright.cli.study.condition;

import java.util.List;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;

/**
 * What a study tells of a project in several conditions.
 *
 * @param job that it is about
 * @param offered whether the conditions are offered, because the file names none
 * @param cases one for each condition, at least one
 */
public record Cases<A>(Job job, boolean offered, List<Case<A>> cases) implements Answer {
  public Cases {
    cases = List.copyOf(cases);
  }

  /** Whether there is no balance in any of the conditions. */
  public boolean lacksEveryBalance() {
    return cases.stream().allMatch(one -> one.answer().isEmpty());
  }

  /** The conditions. */
  public List<NamedCondition> conditions() {
    return cases.stream().map(Case::named).toList();
  }
}
