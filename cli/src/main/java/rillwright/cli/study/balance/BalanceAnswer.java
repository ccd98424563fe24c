package rillwright.cli.study.balance;

import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.cli.study.RunningFigures;
import rillwright.solver.study.valvesetting.ValveSettings;

/**
 * Valve settings of a project.
 *
 * @param job that it is about
 * @param settings of the valves
 * @param takes what it takes to run with them
 */
public record BalanceAnswer(Job job, ValveSettings settings, RunningFigures takes)
    implements Answer {
  /** Whether not all falls can get their target. */
  public boolean missesATarget() {
    return settings.state().missesATarget();
  }

  /** Whether it does not do what it should: a target is missed or a chamber starves. */
  public boolean fallsShort() {
    return settings.state().fallsShort();
  }
}
