package rillwright.cli.study.choice;

import java.util.List;
import java.util.Optional;
import rillwright.cli.study.Job;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.solver.study.pipechoice.GravityChoice;
import rillwright.solver.study.pipechoice.GravityPipe;

/**
 * Sizes of pipe tried in a project without a pump.
 *
 * @param job that it is about
 * @param years over which cost is counted
 * @param currency of all prices; empty if none is known
 * @param choice the sizes, ranked
 * @param unpriced pipe that has no price
 * @param uncounted fittings that have none while others have
 * @param conditions that judge them; empty to judge by the project as it stands
 */
public record GravityAnswer(
    Job job,
    double years,
    Optional<String> currency,
    GravityChoice choice,
    List<String> unpriced,
    List<String> uncounted,
    Optional<JudgingConditions> conditions)
    implements SizesAnswer<GravityPipe> {
  public GravityAnswer {
    unpriced = List.copyOf(unpriced);
    uncounted = List.copyOf(uncounted);
  }
}
