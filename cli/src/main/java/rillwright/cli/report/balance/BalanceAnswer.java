package rillwright.cli.report.balance;

import java.util.List;
import rillwright.cli.report.RunningFigures;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.study.valvesetting.ValveSettings;

/**
 * Valve settings of a project.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param changes to the file, as written on the command line
 * @param settings of the valves
 * @param running what it takes to run with them
 */
public record BalanceAnswer(
    String title,
    ShownUnits units,
    List<String> changes,
    ValveSettings settings,
    RunningFigures running) {
  public BalanceAnswer {
    changes = List.copyOf(changes);
  }

  /** Whether not all falls can get their wish. */
  public boolean missesAWish() {
    return settings.state().missesAWish();
  }
}
