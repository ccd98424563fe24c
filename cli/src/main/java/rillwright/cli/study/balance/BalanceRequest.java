package rillwright.cli.study.balance;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.cli.study.RunningFigures;
import rillwright.solver.network.Network;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.valvesetting.ValvePlace;
import rillwright.solver.study.valvesetting.ValveSettingFinder;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;
import rillwright.solver.study.valvesetting.ValveSettings;

/**
 * How are valves to be set so that every fall gets its share?
 *
 * @param valves that may be set; none for all that are marked adjustable
 * @param aim what the falls are to get
 */
public record BalanceRequest(List<ValvePlace> valves, Aim aim) implements Request<BalanceAnswer> {
  public BalanceRequest {
    valves = List.copyOf(valves);
  }

  @Override
  public BalanceAnswer answer(Project project, Progress progress) {
    Network network = project.network();
    PumpsChosen.require(network);
    List<ValvePlace> places = valves.isEmpty() ? ValvePlace.listAdjustable(network) : valves;
    ValveSettings settings = ValveSettingFinder.find(network, places, aim);
    return new BalanceAnswer(
        Job.of(project), settings, RunningFigures.of(settings.state(), project.running()));
  }
}
