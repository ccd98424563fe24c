package rillwright.cli.study.solve;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.SheetFindings;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.pumping.PumpSuction;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.FarFromBest;

/**
 * A solved project.
 *
 * @param job that it is about
 * @param state what flows where
 * @param findings what the crew should know
 */
public record Solved(Job job, SteadyState state, List<Finding> findings) implements Answer {
  public Solved {
    findings = List.copyOf(findings);
  }

  /** That of a project in its steady state. */
  public static Solved of(Project project, SteadyState state) {
    List<Finding> findings = new ArrayList<>(Findings.of(state));
    findings.addAll(FarFromBest.in(state));
    findings.addAll(SheetFindings.of(project));
    return new Solved(Job.of(project), state, findings);
  }

  /** What running its pumps takes. */
  public RunningFigures takes() {
    return RunningFigures.of(state, running());
  }

  /** Whether a fall or outlet gets less than its target. */
  public boolean missesATarget() {
    return state.missesATarget();
  }

  /** Whether water boils at the inlet of a pump, which then gives less than its curve. */
  public boolean boils() {
    return PumpSuction.listFed(state).stream().anyMatch(PumpSuction::boils);
  }

  /** Whether it does not do what it should: a target is missed or a chamber starves. */
  public boolean fallsShort() {
    return state.fallsShort();
  }
}
