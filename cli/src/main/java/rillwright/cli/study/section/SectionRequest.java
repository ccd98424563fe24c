package rillwright.cli.study.section;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.study.Job;
import rillwright.cli.study.Request;
import rillwright.solver.network.Network;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.progress.Progress;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * Along which ways does the water run, and at which elevations and heads? A project without a
 * balance, or with a pump still to be chosen, is answered with what is built.
 *
 * @param condition of the site in which it is asked; empty for the project as written
 */
public record SectionRequest(Optional<String> condition) implements Request<Section> {
  /** Of the project as written. */
  public SectionRequest() {
    this(Optional.empty());
  }

  /**
   * {@inheritDoc}
   *
   * @throws rillwright.cli.file.fault.InvalidInput if the condition is wrong or not there
   */
  @Override
  public Section answer(Project asWritten, Progress progress) {
    Project project =
        condition
            .map(name -> ProjectConditions.of(asWritten, List.of(name)).projects().get(0).project())
            .orElse(asWritten);
    Network network = project.network();
    Optional<SteadyState> state = Optional.empty();
    Optional<NoBalance.Reason> noBalance = Optional.empty();
    if (network.placed(PlannedPump.class).isEmpty()) {
      try {
        state = Optional.of(SteadyStateFinder.find(network));
      } catch (NoBalance none) {
        noBalance = Optional.of(none.reason());
      }
    }
    Hydraulics hydraulics = Hydraulics.of(network, state);
    return new Section(
        Job.of(project),
        condition,
        network,
        state,
        noBalance,
        new WayBuilder(project.streams(), hydraulics).ways());
  }
}
