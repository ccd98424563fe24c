package rillwright.solver.study.pumpchoice;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Network;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Steps;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.trial.PumpOffer;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.Ranking;
import rillwright.solver.trial.RunningTerms;
import rillwright.solver.trial.SiteState;
import rillwright.solver.trial.TrialSites;

/** Tries every pump of a list in a network and ranks them. */
public final class PumpChooser {
  private PumpChooser() {}

  /**
   * The pumps tried.
   *
   * @param states conditions that judge them; empty to judge by the network as it stands
   * @param place where the pump stands; the other pumps are chosen
   * @param offers the list, at least one
   * @param upTo how many of one pump may stand together, 1 or more
   * @param terms what running costs
   * @param progress receives how many pumps are tried
   * @throws rillwright.solver.steady.NoBalance if the network has no balanced state with any of
   *     them
   * @throws IllegalArgumentException if there is no target
   */
  public static PumpChoice choose(
      Network network,
      List<SiteState> states,
      PumpPlace place,
      List<PumpOffer> offers,
      int upTo,
      RunningTerms terms,
      Progress progress) {
    List<PumpSetup> setups = new ArrayList<>();
    for (PumpOffer offer : offers) {
      setups.addAll(PumpSetup.listOf(offer, upTo));
    }
    TrialSites sites = new TrialSites(network, states, place);
    return new PumpChoice(
        sites.demand(), Ranking.of(sites, setups, terms, new Steps(progress, setups.size())));
  }
}
