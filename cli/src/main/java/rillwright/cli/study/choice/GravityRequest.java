package rillwright.cli.study.choice;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.cli.study.condition.SiteConditions;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.pipechoice.GravityChooser;

/**
 * Which size of pipe, where nothing is pumped?
 *
 * @param sizes to try, at least one option; all of the same lines
 * @param years over which cost is counted, above 0
 * @param conditions names of those that judge the sizes, none for all; empty to judge them by the
 *     project as it stands
 */
public record GravityRequest(
    List<SizeOption> sizes, double years, Optional<List<String>> conditions)
    implements Request<GravityAnswer> {
  public GravityRequest {
    sizes = List.copyOf(sizes);
  }

  /**
   * {@inheritDoc}
   *
   * @throws SizeWithoutEffect if nothing in a line changes with its size
   * @throws rillwright.cli.file.fault.InvalidInput if a condition is wrong or not there
   */
  @Override
  public GravityAnswer answer(Project project, Progress progress) {
    PumpsChosen.require(project.network());
    SiteConditions judging = SiteConditions.of(project, conditions);
    SizedProjects sized = SizedProjects.of(project, sizes, judging);
    return new GravityAnswer(
        Job.of(project),
        years,
        Offers.currencyOf(project),
        GravityChooser.choose(sized.options(), progress),
        sized.unpriced(),
        sized.uncounted(),
        judging.shown(SizeOption.tried(sizes)));
  }
}
