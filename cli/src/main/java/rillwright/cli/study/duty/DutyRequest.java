package rillwright.cli.study.duty;

import rillwright.cli.file.Project;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.solver.network.Network;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.duty.DutyFinder;

/**
 * What flow and head must a pump make?
 *
 * @param place where it stands or is to stand
 */
public record DutyRequest(PumpPlace place) implements Request<DutyAnswer> {
  @Override
  public DutyAnswer answer(Project project, Progress progress) {
    Network network = project.network();
    PumpsChosen.require(network, place);
    return new DutyAnswer(Job.of(project), network, place, DutyFinder.find(network, place));
  }
}
