package rillwright.cli.study.check;

import rillwright.cli.file.Project;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.study.Request;
import rillwright.solver.progress.Progress;

/** What does a project say? Its readings are read too: what cannot be is a fault here as well. */
public record CheckRequest() implements Request<Checked> {
  /**
   * {@inheritDoc}
   *
   * @throws rillwright.cli.file.fault.InvalidInput with all that is wrong with its readings
   */
  @Override
  public Checked answer(Project project, Progress progress) {
    VisitReader.inProject(project);
    return new Checked(project);
  }
}
