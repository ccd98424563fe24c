package rillwright.solver.study.pumpchoice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.balance.NotBalanced;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.trial.PumpOffer;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.PumpTrials;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.RunningTerms;

/** Tries every pump of a list in a network, on all processors, and ranks them. */
public final class PumpChooser {
  private PumpChooser() {}

  /**
   * The pumps tried.
   *
   * @param trials in the network
   * @param offers the list
   * @param upTo how many of one pump may stand together, 1 or more
   * @param terms what running costs
   * @throws NoBalance if the network has no balanced state with any of them
   */
  public static PumpChoice choose(
      PumpTrials trials, List<PumpOffer> offers, int upTo, RunningTerms terms) {
    List<Tried> all =
        offers.parallelStream().map(offer -> tryAll(trials, offer, upTo, terms)).toList();
    List<RatedTrial> ranked = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    Optional<RuntimeException> why = Optional.empty();
    for (Tried tried : all) {
      ranked.addAll(tried.rated());
      why = why.or(tried::unbalanced);
      if (tried.unbalanced().isPresent()) {
        leftOut.add(tried.offer().model());
      }
    }
    if (ranked.isEmpty() && why.isPresent()) {
      throw why.get();
    }
    ranked.sort(RatedTrial.BEST_FIRST);
    return new PumpChoice(trials.demand(), ranked, leftOut);
  }

  /** What became of one offer: trials, or why there is no balance. */
  private record Tried(
      PumpOffer offer, List<RatedTrial> rated, Optional<RuntimeException> unbalanced) {}

  private static Tried tryAll(PumpTrials trials, PumpOffer offer, int upTo, RunningTerms terms) {
    List<RatedTrial> rated = new ArrayList<>();
    try {
      for (PumpSetup setup : PumpSetup.listOf(offer, upTo)) {
        for (PumpTrial trial : trials.runAtUsefulSpeeds(setup)) {
          rated.add(RatedTrial.of(trial, terms));
        }
      }
      return new Tried(offer, rated, Optional.empty());
    } catch (NoBalance | NotBalanced unbalanced) {
      return new Tried(offer, List.of(), Optional.of(unbalanced));
    }
  }
}
