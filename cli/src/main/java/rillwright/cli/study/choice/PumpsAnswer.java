package rillwright.cli.study.choice;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.solver.study.pumpchoice.PumpChoice;
import rillwright.solver.trial.RunningTerms;
import rillwright.solver.trial.SiteState;

/**
 * Pumps of a list tried in a project.
 *
 * @param duty what the pump must make
 * @param terms what running costs
 * @param currency of all prices; empty if none is known
 * @param choice the pumps, ranked
 * @param faults what is wrong with sheets that could not be tried
 * @param otherCurrencies models whose price is in another currency and does not count
 * @param otherKinds pumps that stand otherwise than the one in the file; empty if none does
 * @param conditions that judge them; empty to judge by the project as it stands
 * @param states the project in these conditions
 */
public record PumpsAnswer(
    DutyAnswer duty,
    RunningTerms terms,
    Optional<String> currency,
    PumpChoice choice,
    List<Fault> faults,
    List<String> otherCurrencies,
    Optional<OtherKinds> otherKinds,
    Optional<JudgingConditions> conditions,
    List<SiteState> states)
    implements Answer {
  public PumpsAnswer {
    faults = List.copyOf(faults);
    otherCurrencies = List.copyOf(otherCurrencies);
    states = List.copyOf(states);
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
