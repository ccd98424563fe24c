package rillwright.cli.report;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.site.Running;
import rillwright.cli.report.conditions.JudgingConditions;
import rillwright.solver.study.pumpchoice.PumpChoice;
import rillwright.solver.trial.RunningTerms;
import rillwright.solver.trial.SiteState;

/**
 * Pumps of a list tried in a project.
 *
 * @param duty what the pump must make
 * @param changes made on the command line, as written
 * @param terms what running costs
 * @param running the same as the file says it
 * @param currency of all prices; empty if none is known
 * @param choice the pumps, ranked
 * @param faults what is wrong with sheets that could not be tried
 * @param otherCurrencies models whose price is in another currency and does not count
 * @param effort of trying them
 * @param conditions that judge them; empty to judge by the project as it stands
 * @param states the project in these conditions
 */
public record PumpsAnswer(
    DutyAnswer duty,
    List<String> changes,
    RunningTerms terms,
    Running running,
    Optional<String> currency,
    PumpChoice choice,
    List<Fault> faults,
    List<String> otherCurrencies,
    Effort effort,
    Optional<JudgingConditions> conditions,
    List<SiteState> states) {
  public PumpsAnswer {
    changes = List.copyOf(changes);
    faults = List.copyOf(faults);
    otherCurrencies = List.copyOf(otherCurrencies);
    states = List.copyOf(states);
  }

  /** What each choice takes in a year. */
  public PumpedYear year() {
    return new PumpedYear(running, duty);
  }
}
