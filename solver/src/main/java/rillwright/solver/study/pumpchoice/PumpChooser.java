package rillwright.solver.study.pumpchoice;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.balance.NotBalanced;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.trial.PumpOffer;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.PumpTrials;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.RunningTerms;

/** Tries every pump of a list in a network and ranks them. */
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
    List<RatedTrial> ranked = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    RuntimeException why = null;
    for (PumpOffer offer : offers) {
      try {
        for (PumpSetup setup : PumpSetup.listOf(offer, upTo)) {
          for (PumpTrial trial : trials.runAtUsefulSpeeds(setup)) {
            ranked.add(RatedTrial.of(trial, terms));
          }
        }
      } catch (NoBalance | NotBalanced unbalanced) {
        leftOut.add(offer.model());
        why = unbalanced;
      }
    }
    if (ranked.isEmpty() && why != null) {
      throw why;
    }
    ranked.sort(RatedTrial.BEST_FIRST);
    return new PumpChoice(trials.demand(), ranked, leftOut, trials.solves());
  }
}
