package rillwright.cli.report.weak;

import java.util.List;
import rillwright.solver.study.diagnosis.cause.CauseTable;
import rillwright.solver.study.diagnosis.cause.SignTable;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/**
 * The causes of a job before anything was read.
 *
 * @param title of the job, as written
 * @param changes made on the command line, as written
 * @param job as built
 * @param causes with their priors
 * @param signs what signs do to them
 */
public record CausesAnswer(
    String title, List<String> changes, AsBuilt job, CauseTable causes, SignTable signs) {
  public CausesAnswer {
    changes = List.copyOf(changes);
  }
}
