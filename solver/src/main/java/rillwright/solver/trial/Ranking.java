package rillwright.solver.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.progress.Steps;
import rillwright.solver.steady.NoBalance;

/**
 * Pumps tried at one place and ranked.
 *
 * @param ranked the best first
 * @param leftOut models with which the network has no balanced state
 */
public record Ranking(List<RatedTrial> ranked, List<String> leftOut) {
  public Ranking {
    ranked = List.copyOf(ranked);
    leftOut = List.copyOf(leftOut);
  }

  /** What became of one pump: trials, or why there is no balance. */
  private record Tried(
      String model, List<RatedTrial> rated, Optional<RuntimeException> unbalanced) {}

  /**
   * Tries pumps, on all processors, each at its useful speeds.
   *
   * @param steps one for each setup
   * @throws NoBalance if the network has no balanced state with any of them
   * @throws rillwright.solver.progress.Stopped if it is stopped
   */
  public static Ranking of(
      TrialSites sites, List<PumpSetup> setups, RunningTerms terms, Steps steps) {
    List<Tried> all =
        setups.parallelStream().map(setup -> tried(sites, setup, terms, steps)).toList();
    List<RatedTrial> ranked = new ArrayList<>();
    Set<String> leftOut = new LinkedHashSet<>();
    Optional<RuntimeException> why = Optional.empty();
    for (Tried one : all) {
      ranked.addAll(one.rated());
      why = why.or(one::unbalanced);
      if (one.unbalanced().isPresent()) {
        leftOut.add(one.model());
      }
    }
    if (ranked.isEmpty() && why.isPresent()) {
      throw why.get();
    }
    ranked.sort(RatedTrial.BEST_FIRST);
    return new Ranking(ranked, List.copyOf(leftOut));
  }

  private static Tried tried(TrialSites sites, PumpSetup setup, RunningTerms terms, Steps steps) {
    steps.done(0);
    Tried tried = tried(sites, setup, terms);
    steps.done(1);
    return tried;
  }

  private static Tried tried(TrialSites sites, PumpSetup setup, RunningTerms terms) {
    String model = setup.offer().model();
    try {
      return new Tried(model, sites.runAtUsefulSpeeds(setup, terms), Optional.empty());
    } catch (NoBalance | SearchFailed unbalanced) {
      return new Tried(model, List.of(), Optional.of(unbalanced));
    }
  }
}
