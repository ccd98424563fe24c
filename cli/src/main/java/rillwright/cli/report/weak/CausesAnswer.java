package rillwright.cli.report.weak;

import java.util.List;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.study.diagnosis.cause.CauseTable;
import rillwright.solver.study.diagnosis.cause.SignTable;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/**
 * The causes of a job before anything was read.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param changes made on the command line, as written
 * @param job as built
 * @param causes with their priors
 * @param signs what signs do to them
 */
public record CausesAnswer(
    String title,
    ShownUnits units,
    List<String> changes,
    AsBuilt job,
    CauseTable causes,
    SignTable signs) {
  public CausesAnswer {
    changes = List.copyOf(changes);
  }

  /** Names of the causes, each once. */
  public List<String> names() {
    return causes.causes().stream().map(cause -> cause.id().cause()).distinct().toList();
  }
}
