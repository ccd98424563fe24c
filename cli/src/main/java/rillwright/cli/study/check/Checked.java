package rillwright.cli.study.check;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.cli.study.SheetFindings;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.stream.WaterLoss;

/**
 * A project file that is right.
 *
 * @param project what it says
 */
public record Checked(Project project) implements Answer {
  /** What it says that can hardly be. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>(Findings.of(project.network()));
    findings.addAll(SheetFindings.of(project));
    project.streams().loss().flatMap(WaterLoss::coldWaterAssumed).ifPresent(findings::add);
    return findings;
  }

  @Override
  public Job job() {
    return Job.of(project);
  }
}
