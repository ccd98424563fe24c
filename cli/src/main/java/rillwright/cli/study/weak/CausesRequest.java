package rillwright.cli.study.weak;

import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.visit.PriorsReader.Priors;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.diagnosis.cause.SignTable;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/**
 * What could be wrong with a job, before anything is read?
 *
 * @param priors of its causes and what signs do; empty for the usual ones
 */
public record CausesRequest(Optional<Priors> priors) implements Request<CausesAnswer> {
  @Override
  public CausesAnswer answer(Project project, Progress progress) {
    PumpsChosen.require(project.network());
    AsBuilt built = BuiltJob.of(project);
    Priors shown = priorsOf(built);
    return new CausesAnswer(Job.of(project), built, shown.causes(), shown.signs());
  }

  /** The causes of a job with the usual priors. */
  public static CauseTable usual(AsBuilt built) {
    return CauseTable.of(built);
  }

  Priors priorsOf(AsBuilt built) {
    return priors.orElseGet(() -> new Priors(usual(built), SignTable.commonPractice()));
  }
}
