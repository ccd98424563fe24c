package rillwright.cli.report.conditions;

import java.util.List;
import rillwright.cli.report.units.ShownUnits;

/**
 * What a study tells of a project in several conditions.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param changes made on the command line, as written
 * @param offered whether the conditions are offered, because the file names none
 * @param cases one for each condition, at least one
 */
public record Cases<A>(
    String title, ShownUnits units, List<String> changes, boolean offered, List<Case<A>> cases) {
  public Cases {
    changes = List.copyOf(changes);
    cases = List.copyOf(cases);
  }

  /** The conditions. */
  public List<NamedCondition> conditions() {
    return cases.stream().map(Case::named).toList();
  }
}
