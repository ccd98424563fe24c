package rillwright.cli.report.conditions;

import java.util.List;

/**
 * The conditions that judge the choices of a study.
 *
 * @param offered whether they are offered, because the file names none
 * @param conditions at least one
 * @param inTheWay what they change of the very thing that is tried, in words
 */
public record JudgingConditions(
    boolean offered, List<NamedCondition> conditions, List<String> inTheWay) {
  public JudgingConditions {
    conditions = List.copyOf(conditions);
    inTheWay = List.copyOf(inTheWay);
  }
}
