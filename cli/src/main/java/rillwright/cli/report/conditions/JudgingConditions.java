package rillwright.cli.report.conditions;

import java.util.List;

/**
 * The conditions that judge the choices of a study.
 *
 * @param offered whether they are offered, because the file names none
 * @param conditions at least one
 */
public record JudgingConditions(boolean offered, List<NamedCondition> conditions) {
  public JudgingConditions {
    conditions = List.copyOf(conditions);
  }
}
