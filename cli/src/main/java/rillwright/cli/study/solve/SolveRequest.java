package rillwright.cli.study.solve;

import rillwright.cli.file.Project;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.solver.progress.Progress;
import rillwright.solver.steady.SteadyStateFinder;

/** What flows where, at what head? */
public record SolveRequest() implements Request<Solved> {
  @Override
  public Solved answer(Project project, Progress progress) {
    PumpsChosen.require(project.network());
    return Solved.of(project, SteadyStateFinder.find(project.network()));
  }
}
