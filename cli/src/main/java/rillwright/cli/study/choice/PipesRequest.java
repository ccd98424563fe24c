package rillwright.cli.study.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.cli.study.condition.SiteConditions;
import rillwright.cli.study.duty.DutyRequest;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.pipechoice.PipeChoice;
import rillwright.solver.study.pipechoice.PipeChooser;
import rillwright.solver.trial.PumpOffer;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.RunningTerms;

/**
 * Which size of pipe, where a pump drives the water?
 *
 * @param place of the pump
 * @param sizes to try, at least one option; all of the same lines
 * @param sheets of pumps among which each size chooses its own; empty for the project's own pump
 * @param upTo how many of one pump of the sheets may stand together, 1 or more
 * @param years over which cost is counted, above 0
 * @param conditions names of those that judge the sizes, none for all; empty to judge them by the
 *     project as it stands
 */
public record PipesRequest(
    PumpPlace place,
    List<SizeOption> sizes,
    Optional<SheetFolder> sheets,
    int upTo,
    double years,
    Optional<List<String>> conditions)
    implements Request<PipesAnswer> {
  public PipesRequest {
    sizes = List.copyOf(sizes);
  }

  /**
   * {@inheritDoc}
   *
   * @throws SizeWithoutEffect if nothing in a line changes with its size
   * @throws rillwright.cli.file.fault.InvalidInput if a condition is wrong or not there
   */
  @Override
  public PipesAnswer answer(Project project, Progress progress) {
    PumpsChosen.require(project.network(), place);
    SiteConditions judging = SiteConditions.of(project, conditions);
    SizedProjects sized = SizedProjects.of(project, sizes, judging);
    Offers offers =
        sheets
            .map(folder -> Offers.of(folder, project))
            .orElseGet(() -> Offers.ofProject(project, ownPump(project).model()));
    RunningTerms terms = project.running().over(years);
    PipeChoice choice =
        PipeChooser.choose(sized.options(), place, setups(project, offers), terms, progress);
    return new PipesAnswer(
        new DutyRequest(place).answer(project),
        terms,
        offers.currency(),
        choice,
        sheets.isPresent(),
        sized.unpriced(),
        sized.uncounted(),
        sheets.map(SheetFolder::faults).orElse(List.<Fault>of()),
        offers.otherCurrencies(),
        judging.shown(SizeOption.tried(sizes)));
  }

  private List<PumpSetup> setups(Project project, Offers offers) {
    List<PumpSetup> setups = new ArrayList<>();
    if (sheets.isPresent()) {
      for (PumpOffer offer : offers.pumps()) {
        setups.addAll(PumpSetup.listOf(offer, upTo));
      }
    } else {
      PumpSet own = ownPump(project).set();
      setups.add(new PumpSetup(offers.pumps().get(0), own.count(), own.arrangement(), own.speed()));
    }
    return setups;
  }

  private Pump ownPump(Project project) {
    Part part = project.network().line(place.line()).parts().get(place.partIndex());
    if (part instanceof Pump pump && pump.set().speed() > 0) {
      return pump;
    }
    throw new IllegalArgumentException("no pump runs at " + place);
  }
}
