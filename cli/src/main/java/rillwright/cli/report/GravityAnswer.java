package rillwright.cli.report;

import java.util.List;
import java.util.Optional;
import rillwright.cli.report.conditions.JudgingConditions;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.study.pipechoice.GravityChoice;

/**
 * Sizes of pipe tried in a project without a pump.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param changes made on the command line, as written
 * @param years over which cost is counted
 * @param currency of all prices; empty if none is known
 * @param choice the sizes, ranked
 * @param unpriced pipe that has no price
 * @param uncounted fittings that have none while others have
 * @param conditions that judge them; empty to judge by the project as it stands
 */
public record GravityAnswer(
    String title,
    ShownUnits units,
    List<String> changes,
    double years,
    Optional<String> currency,
    GravityChoice choice,
    List<String> unpriced,
    List<String> uncounted,
    Optional<JudgingConditions> conditions) {
  public GravityAnswer {
    changes = List.copyOf(changes);
    unpriced = List.copyOf(unpriced);
    uncounted = List.copyOf(uncounted);
  }
}
