package rillwright.cli.study.condition;

import java.util.List;
import rillwright.cli.study.condition.NamedCondition.Changed;

/**
 * The conditions that judge the choices of a study.
 *
 * @param offered whether they are offered, because the file names none
 * @param conditions at least one
 * @param inTheWay what they change of the very thing that is tried
 */
public record JudgingConditions(
    boolean offered, List<NamedCondition> conditions, List<InTheWay> inTheWay) {
  public JudgingConditions {
    conditions = List.copyOf(conditions);
    inTheWay = List.copyOf(inTheWay);
  }

  /** A change of a condition to what the study tries itself. */
  public record InTheWay(String condition, Changed changed) {}
}
