package rillwright.cli.study.choice;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.cli.study.condition.SiteConditions;
import rillwright.cli.study.duty.DutyRequest;
import rillwright.solver.network.Network;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.pumpchoice.PumpChoice;
import rillwright.solver.study.pumpchoice.PumpChooser;
import rillwright.solver.trial.RunningTerms;
import rillwright.solver.trial.SiteState;

/**
 * Which pump of a list meets the targets?
 *
 * @param place where the pump stands or is to stand
 * @param sheets of the pumps to try, at least one
 * @param upTo how many of one pump may stand together, 1 or more
 * @param years over which cost is counted, above 0
 * @param conditions names of those that judge the pumps, none for all; empty to judge them by the
 *     project as it stands
 */
public record PumpsRequest(
    PumpPlace place, SheetFolder sheets, int upTo, double years, Optional<List<String>> conditions)
    implements Request<PumpsAnswer> {
  /** Years over which cost is usually counted. */
  public static final double USUAL_YEARS = 10;

  /** One pump of a list alone, judged by the project as it stands. */
  public static PumpsRequest usual(PumpPlace place, SheetFolder sheets) {
    return new PumpsRequest(place, sheets, 1, USUAL_YEARS, Optional.empty());
  }

  /**
   * {@inheritDoc}
   *
   * @throws rillwright.cli.file.fault.InvalidInput if a condition is wrong or not there
   */
  @Override
  public PumpsAnswer answer(Project project, Progress progress) {
    Network network = project.network();
    PumpsChosen.require(network, place);
    SiteConditions judging = SiteConditions.of(project, conditions);
    List<SiteState> states = judging.states(project);
    Offers offers = Offers.of(sheets, project);
    RunningTerms terms = project.running().over(years);
    PumpChoice choice =
        PumpChooser.choose(network, states, place, offers.pumps(), upTo, terms, progress);
    return new PumpsAnswer(
        new DutyRequest(place).answer(project),
        terms,
        offers.currency(),
        choice,
        sheets.faults(),
        offers.otherCurrencies(),
        OtherKinds.of(project, place, sheets.sheets()),
        judging.shown(List.of(new Address(List.of("lines", place.line().value(), "pump")).text())),
        states);
  }
}
