package rillwright.solver.study.pipechoice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.finding.Findings;
import rillwright.solver.network.Network;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Steps;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.study.pipechoice.GravityPipe.InCondition;
import rillwright.solver.trial.SiteState;

/** Balances a network without a pump with each size of pipe, and ranks them. */
public final class GravityChooser {
  private GravityChooser() {}

  /**
   * The options tried.
   *
   * @param options at least one; all of one network but for sizes, with a target
   * @param progress receives how many are tried
   * @throws NoBalance if there is no balanced state
   */
  public static GravityChoice choose(List<PipeOption> options, Progress progress) {
    Steps steps = new Steps(progress, options.size());
    List<GravityPipe> rated = new ArrayList<>();
    for (PipeOption option : options) {
      rated.add(rate(option));
      steps.done(1);
    }
    rated.sort(GravityPipe.BEST_FIRST);
    return new GravityChoice(rated);
  }

  private static GravityPipe rate(PipeOption option) {
    GravityRun run = GravityRun.in(option.network());
    List<InCondition> conditions = new ArrayList<>();
    for (SiteState site : option.states()) {
      conditions.add(new InCondition(site.condition(), runIn(site.network())));
    }
    return new GravityPipe(option, run, Findings.of(run.inUse().state()), conditions);
  }

  private static Optional<GravityRun> runIn(Network network) {
    try {
      return Optional.of(GravityRun.in(network));
    } catch (NoBalance | SearchFailed unbalanced) {
      return Optional.empty();
    }
  }
}
