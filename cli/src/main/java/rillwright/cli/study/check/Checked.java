package rillwright.cli.study.check;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;

/**
 * A project file that is right.
 *
 * @param project what it says
 */
public record Checked(Project project) implements Answer {
  /** What it says that can hardly be. */
  public List<Finding> findings() {
    return Findings.of(project.network());
  }

  @Override
  public Job job() {
    return Job.of(project);
  }
}
