package rillwright.cli.report;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.site.Running;
import rillwright.cli.report.conditions.JudgingConditions;
import rillwright.solver.study.pipechoice.PipeChoice;
import rillwright.solver.trial.RunningTerms;

/**
 * Sizes of pipe tried in a project.
 *
 * @param duty what the pump must make with the pipes as the file has them
 * @param changes made on the command line, as written
 * @param terms what running costs
 * @param running the same as the file says it
 * @param currency of all prices; empty if none is known
 * @param choice the sizes, ranked
 * @param pumpsFree whether each size had its own cheapest pump of a list
 * @param unpriced pipe that has no price
 * @param uncounted fittings that have none while others have
 * @param faults what is wrong with sheets that could not be tried
 * @param otherCurrencies models whose price is in another currency and does not count
 * @param effort of trying them
 * @param conditions that judge them; empty to judge by the project as it stands
 */
public record PipesAnswer(
    DutyAnswer duty,
    List<String> changes,
    RunningTerms terms,
    Running running,
    Optional<String> currency,
    PipeChoice choice,
    boolean pumpsFree,
    List<String> unpriced,
    List<String> uncounted,
    List<Fault> faults,
    List<String> otherCurrencies,
    Effort effort,
    Optional<JudgingConditions> conditions) {
  public PipesAnswer {
    changes = List.copyOf(changes);
    unpriced = List.copyOf(unpriced);
    uncounted = List.copyOf(uncounted);
    faults = List.copyOf(faults);
    otherCurrencies = List.copyOf(otherCurrencies);
  }

  /** What each choice takes in a year. */
  public PumpedYear year() {
    return new PumpedYear(running, duty);
  }
}
