package rillwright.cli.study.jobsheet;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.study.Request;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.cli.study.balance.BalanceRequest;
import rillwright.cli.study.check.CheckRequest;
import rillwright.cli.study.curve.Curves;
import rillwright.cli.study.curve.CurvesRequest;
import rillwright.cli.study.duty.DutyRequest;
import rillwright.cli.study.jobsheet.SheetAnswer.AsSet;
import rillwright.cli.study.jobsheet.card.Card;
import rillwright.cli.study.jobsheet.materials.Materials;
import rillwright.cli.study.mend.MendRequest;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.kind.Valves;
import rillwright.cli.study.section.SectionRequest;
import rillwright.cli.study.solve.SolveRequest;
import rillwright.cli.study.solve.Solved;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.cli.study.stream.StreamRequest;
import rillwright.cli.study.stream.StreamRequest.Follow;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Basin;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.study.valvesetting.ValvePlace;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;
import rillwright.solver.trial.Verdict;

/**
 * What stands on the job sheet? Valves that are marked adjustable are set first, as {@link
 * BalanceRequest} sets them: to the largest share or, where that is too much, to the targets. All
 * else is of the project so set, but what would mend it, where that lacks anything: that is the
 * answer of {@link MendRequest} for the file as written.
 *
 * @param years over which cost counts, above 0
 */
public record SheetRequest(double years) implements Request<SheetAnswer> {

  @Override
  public SheetAnswer answer(Project project, Progress progress) {
    List<PumpPlace> planned = PumpPlace.listPlanned(project.network());
    if (!planned.isEmpty()) {
      return new SheetAnswer(
          new CheckRequest().answer(project),
          new SectionRequest().answer(project),
          Materials.of(project),
          curves(project, planned),
          planned.size() == 1 && !Targets.of(project.network()).isEmpty()
              ? Optional.of(new DutyRequest(planned.get(0)).answer(project))
              : Optional.empty(),
          Optional.empty());
    }
    Optional<BalanceAnswer> settings = settings(project);
    Project set = settings.map(it -> set(project, it)).orElse(project);
    Solved solved = new SolveRequest().answer(set);
    MendRequest mend = new MendRequest(Offered.NOTHING, List.of(), years);
    return new SheetAnswer(
        new CheckRequest().answer(project),
        new SectionRequest().answer(set),
        Materials.of(project),
        curves(set, PumpPlace.listChosen(set.network())),
        Optional.empty(),
        Optional.of(
            new AsSet(
                settings,
                solved,
                mend.answer(mend.findsNeeds(set) ? project : set, progress),
                stream(set),
                Card.of(solved))));
  }

  /** Curves can be drawn where no other pump is to be chosen and some water can flow. */
  private static List<Curves> curves(Project project, List<PumpPlace> places) {
    boolean isOneToBeChosen = PumpPlace.listPlanned(project.network()).size() < 2;
    return isOneToBeChosen
        ? places.stream()
            .map(place -> new CurvesRequest(place).answer(project))
            .filter(curves -> !curves.system().points().isEmpty())
            .toList()
        : List.of();
  }

  private static Optional<BalanceAnswer> settings(Project project) {
    List<ValvePlace> places = ValvePlace.listAdjustable(project.network());
    if (places.isEmpty() || Targets.of(project.network()).isEmpty()) {
      return Optional.empty();
    }
    try {
      BalanceAnswer largest = new BalanceRequest(places, Aim.LARGEST_SHARE).answer(project);
      boolean isTooMuch = largest.settings().targetFraction() > Verdict.TOO_MUCH_SHARE;
      BalanceAnswer set =
          isTooMuch ? new BalanceRequest(places, Aim.TARGET).answer(project) : largest;
      return Valves.canBeWritten(set.settings()) ? Optional.of(set) : Optional.empty();
    } catch (NoBalance | SearchFailed unbalanced) {
      return Optional.empty();
    }
  }

  /** The project so set; what the user has changed stays so. */
  private static Project set(Project project, BalanceAnswer settings) {
    List<String> changes = Valves.changes(project, settings.settings());
    return project.withTree(project.with(changes).tree());
  }

  private static Optional<StreamAnswer> stream(Project project) {
    boolean hasWater = !project.network().points(Basin.class).isEmpty();
    boolean isDescribed =
        !project.streams().streams().isEmpty() || project.streams().loss().isPresent();
    return hasWater && isDescribed
        ? Optional.of(new StreamRequest(Follow.NO).answer(project))
        : Optional.empty();
  }
}
