package rillwright.cli.study.section;

import java.util.Optional;
import rillwright.cli.file.Project;
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
 */
public record SectionRequest() implements Request<Section> {
  @Override
  public Section answer(Project project, Progress progress) {
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
        network,
        state,
        noBalance,
        new WayBuilder(project.streams(), hydraulics).ways());
  }
}
