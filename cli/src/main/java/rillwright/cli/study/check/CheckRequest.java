package rillwright.cli.study.check;

import rillwright.cli.file.Project;
import rillwright.cli.study.Request;
import rillwright.solver.progress.Progress;

/** What does a project say? */
public record CheckRequest() implements Request<Checked> {
  @Override
  public Checked answer(Project project, Progress progress) {
    return new Checked(project);
  }
}
