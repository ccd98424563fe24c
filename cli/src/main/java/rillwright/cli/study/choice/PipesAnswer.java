package rillwright.cli.study.choice;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.study.Job;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.solver.study.pipechoice.PipeChoice;
import rillwright.solver.study.pipechoice.RatedPipe;
import rillwright.solver.trial.RunningTerms;

/**
 * Sizes of pipe tried in a project.
 *
 * @param duty what the pump must make with the pipes as the file has them
 * @param terms what running costs
 * @param currency of all prices; empty if none is known
 * @param choice the sizes, ranked
 * @param pumpsFree whether each size had its own cheapest pump of a list
 * @param unpriced pipe that has no price
 * @param uncounted fittings that have none while others have
 * @param faults what is wrong with sheets that could not be tried
 * @param otherCurrencies models whose price is in another currency and does not count
 * @param conditions that judge them; empty to judge by the project as it stands
 */
public record PipesAnswer(
    DutyAnswer duty,
    RunningTerms terms,
    Optional<String> currency,
    PipeChoice choice,
    boolean pumpsFree,
    List<String> unpriced,
    List<String> uncounted,
    List<Fault> faults,
    List<String> otherCurrencies,
    Optional<JudgingConditions> conditions)
    implements SizesAnswer<RatedPipe> {
  public PipesAnswer {
    unpriced = List.copyOf(unpriced);
    uncounted = List.copyOf(uncounted);
    faults = List.copyOf(faults);
    otherCurrencies = List.copyOf(otherCurrencies);
  }

  @Override
  public Job job() {
    return duty.job();
  }

  /** What each choice takes in a year. */
  public PumpedYear year() {
    return new PumpedYear(duty);
  }
}
