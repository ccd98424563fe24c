package rillwright.cli.study.weak;

import java.util.List;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.solver.study.diagnosis.cause.SignTable;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/**
 * The causes of a job before anything was read.
 *
 * @param job that it is about
 * @param built the job as it was built
 * @param causes with their priors
 * @param signs what signs do to them
 */
public record CausesAnswer(Job job, AsBuilt built, CauseTable causes, SignTable signs)
    implements Answer {

  /** Names of the causes, each once. */
  public List<String> names() {
    return causes.causes().stream().map(cause -> cause.id().cause()).distinct().toList();
  }
}
