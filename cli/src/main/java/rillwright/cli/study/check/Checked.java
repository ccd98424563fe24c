package rillwright.cli.study.check;

import java.util.List;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
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
    return Stream.concat(
            Findings.of(project.network()).stream(),
            project.streams().loss().flatMap(WaterLoss::coldWaterAssumed).stream())
        .toList();
  }

  @Override
  public Job job() {
    return Job.of(project);
  }
}
