package rillwright.cli.study.duty;

import rillwright.cli.file.Project;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Valve;
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
    return of(project, project.network());
  }

  /** The same with all valves wide open that falls may be balanced with. */
  public DutyAnswer withValvesOpen(Project project) {
    Network network = project.network();
    return of(project, network.withLines(network.lines().stream().map(DutyRequest::open).toList()));
  }

  private DutyAnswer of(Project project, Network network) {
    PumpsChosen.require(network, place);
    return new DutyAnswer(Job.of(project), network, place, DutyFinder.find(network, place));
  }

  private static Line open(Line line) {
    return line.withEach(Valve.class, valve -> valve.adjustable() ? valve.wideOpen() : valve);
  }
}
