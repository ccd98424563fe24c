package rillwright.solver.study.pipechoice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Steps;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.Ranking;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.RunningTerms;
import rillwright.solver.trial.TrialSites;

/** Finds each option's own cheapest pump and ranks the options. */
public final class PipeChooser {
  private PipeChooser() {}

  /**
   * The options tried.
   *
   * @param options at least one; all of one network but for sizes
   * @param place of the pump
   * @param setups pumps to choose from, at least one; the project's own if only the pipe is asked
   * @param terms what running costs
   * @param progress receives how many pumps are tried in all options together
   * @throws rillwright.solver.steady.NoBalance if there is no balanced state
   */
  public static PipeChoice choose(
      List<PipeOption> options,
      PumpPlace place,
      List<PumpSetup> setups,
      RunningTerms terms,
      Progress progress) {
    Steps steps = new Steps(progress, options.size() * setups.size());
    boolean anyPriced = options.stream().anyMatch(option -> option.materialCost().isPresent());
    List<RatedPipe> ranked = new ArrayList<>();
    Set<String> leftOut = new TreeSet<>();
    int count = 0;
    for (PipeOption option : options) {
      TrialSites sites = new TrialSites(option.network(), option.states(), place);
      Ranking pumps = Ranking.of(sites, setups, terms, steps);
      count += sites.count() * pumps.ranked().size();
      leftOut.addAll(pumps.leftOut());
      ranked.add(rate(option, sites, pumps.ranked().get(0), anyPriced));
    }
    ranked.sort(RatedPipe.bestFirst(PipeChoice.isOfOnePump(ranked)));
    return new PipeChoice(ranked, List.copyOf(leftOut), count);
  }

  private static RatedPipe rate(
      PipeOption option, TrialSites sites, RatedTrial best, boolean anyPriced) {
    OptionalDouble pipe = option.materialCost();
    OptionalDouble pump = best.costOverYears();
    boolean known = pump.isPresent() && (pipe.isPresent() || !anyPriced);
    return new RatedPipe(
        option,
        sites.demand(),
        best,
        known ? OptionalDouble.of(pump.getAsDouble() + pipe.orElse(0)) : OptionalDouble.empty());
  }
}
