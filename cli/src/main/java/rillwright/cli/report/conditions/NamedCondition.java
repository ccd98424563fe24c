package rillwright.cli.report.conditions;

import java.util.List;

/**
 * A condition as it is told.
 *
 * @param name by which people know it
 * @param changes to the file that make it; none as written
 */
public record NamedCondition(String name, List<Changed> changes) {
  public NamedCondition {
    changes = List.copyOf(changes);
  }

  /**
   * A value that is changed.
   *
   * @param quantity as a change addresses it: {@code lines.intake.skimmer.clogged}
   * @param value what it becomes: {@code 40 %}
   */
  public record Changed(String quantity, String value) {}
}
