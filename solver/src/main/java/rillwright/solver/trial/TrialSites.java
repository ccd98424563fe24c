package rillwright.solver.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.NoBalance;

/**
 * Trials of pumps at one place of a network as it stands, which tells what they cost, and in
 * conditions of its site, which judge them.
 */
public final class TrialSites {
  private final PumpTrials asItStands;
  private final List<InCondition> conditions = new ArrayList<>();

  /** Trials in a condition. */
  private record InCondition(String name, PumpTrials trials) {}

  /**
   * Trials at a place.
   *
   * @param states in which a pump is judged; empty to judge it by the network as it stands
   * @throws IllegalArgumentException if there is no target in one of them
   */
  public TrialSites(Network network, List<SiteState> states, PumpPlace place) {
    this.asItStands = new PumpTrials(network, place);
    for (SiteState state : states) {
      conditions.add(new InCondition(state.condition(), new PumpTrials(state.network(), place)));
    }
  }

  /** What the targets ask of the pump as the network stands. */
  public Demand demand() {
    return asItStands.demand();
  }

  /** How many networks each pump is tried in. */
  public int count() {
    return 1 + conditions.size();
  }

  /**
   * A pump as it is, and if its speed can be set also at a useful lower one. In conditions this is
   * the best of the least speeds that give the targets in each of them; one that does not in
   * another is left out where the pump does as it is.
   *
   * @throws NoBalance if there is no balanced state with it as the network stands
   */
  List<RatedTrial> runAtUsefulSpeeds(PumpSetup setup, RunningTerms terms) {
    List<RatedTrial> rated = new ArrayList<>();
    for (PumpTrial trial : asItStands.runAtUsefulSpeeds(setup)) {
      rated.add(rate(trial, terms));
    }
    RatedTrial asItIs = rated.remove(0);
    for (InCondition condition : conditions) {
      for (PumpTrial trial : slower(condition, setup)) {
        if (rated.stream().noneMatch(known -> known.trial().setup().equals(trial.setup()))) {
          rated.add(rate(asItStands.run(trial.setup()), terms));
        }
      }
    }
    List<RatedTrial> useful = new ArrayList<>(List.of(asItIs));
    rated.stream()
        .filter(slower -> slower.meetsTargets() || !asItIs.meetsTargets())
        .min(RatedTrial.BEST_FIRST)
        .ifPresent(useful::add);
    return useful;
  }

  private static List<PumpTrial> slower(InCondition condition, PumpSetup setup) {
    try {
      List<PumpTrial> trials = condition.trials.runAtUsefulSpeeds(setup);
      return trials.subList(1, trials.size());
    } catch (NoBalance | SearchFailed unbalanced) {
      return List.of();
    }
  }

  private RatedTrial rate(PumpTrial trial, RunningTerms terms) {
    List<ConditionTrial> tried = new ArrayList<>();
    for (InCondition condition : conditions) {
      tried.add(run(condition, trial.setup()));
    }
    return RatedTrial.of(trial, tried, terms);
  }

  private static ConditionTrial run(InCondition condition, PumpSetup setup) {
    Optional<PumpTrial> trial;
    try {
      trial = Optional.of(condition.trials.run(setup));
    } catch (NoBalance | SearchFailed unbalanced) {
      trial = Optional.empty();
    }
    return new ConditionTrial(condition.name, condition.trials.demand(), trial);
  }
}
