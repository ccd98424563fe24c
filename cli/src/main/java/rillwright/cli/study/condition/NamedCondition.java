package rillwright.cli.study.condition;

import java.util.List;
import rillwright.cli.file.condition.Condition;

/**
 * A condition as it is reported.
 *
 * @param name by which people know it
 * @param changes to the file that make it; none as written
 */
public record NamedCondition(String name, List<Changed> changes) {
  public NamedCondition {
    changes = List.copyOf(changes);
  }

  static NamedCondition of(Condition condition) {
    return new NamedCondition(
        condition.name(),
        condition.changes().stream()
            .map(change -> new Changed(change.address(), change.value()))
            .toList());
  }

  /**
   * A value that is changed.
   *
   * @param quantity as a change addresses it: {@code lines.intake.skimmer.clogged}
   * @param value what it becomes: {@code 40 %}
   */
  public record Changed(String quantity, String value) {}
}
