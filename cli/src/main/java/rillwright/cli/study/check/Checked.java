package rillwright.cli.study.check;

import rillwright.cli.file.Project;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;

/**
 * A project file that is right.
 *
 * @param project what it says
 */
public record Checked(Project project) implements Answer {
  @Override
  public Job job() {
    return Job.of(project);
  }
}
