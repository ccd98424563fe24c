package rillwright.cli.report;

import java.util.List;
import rillwright.cli.file.site.Running;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.steady.SteadyState;

/**
 * A solved project.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param running how long its pumps run and what that costs
 * @param state what flows where
 * @param findings what the crew should know
 */
public record Solved(
    String title, ShownUnits units, Running running, SteadyState state, List<Finding> findings) {
  public Solved {
    findings = List.copyOf(findings);
  }

  /** A solved project with the findings of its state. */
  public static Solved of(String title, ShownUnits units, Running running, SteadyState state) {
    return new Solved(title, units, running, state, Findings.of(state));
  }

  /** Whether a fall or outlet gets less than its wish. */
  public boolean missesAWish() {
    return state.missesAWish();
  }
}
