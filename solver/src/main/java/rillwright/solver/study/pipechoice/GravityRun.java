package rillwright.solver.study.pipechoice;

import java.util.List;
import java.util.Optional;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.HeldToTarget;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.trial.MissingValves;
import rillwright.solver.trial.Verdict;

/**
 * Water that runs of itself.
 *
 * @param asItStands with the valves as they stand
 * @param throttled with no fall getting more than its target, if that is how every fall gets it
 * @param missingValves the falls that have to be throttled then and have no valve for it
 */
public record GravityRun(
    Shares asItStands, Optional<Shares> throttled, List<PointName> missingValves) {
  public GravityRun {
    missingValves = List.copyOf(missingValves);
  }

  /**
   * What the falls get of their targets.
   *
   * @param state what flows where
   * @param worst the fall that gets the least share of its target
   * @param leastFraction that share
   * @param greatestShare the greatest share that any gets
   */
  public record Shares(
      SteadyState state, PointName worst, double leastFraction, double greatestShare) {

    static Shares in(Network network, Targets targets) {
      SteadyState state = SteadyStateFinder.find(network);
      PointName worst = targets.worstIn(state);
      return new Shares(
          state, worst, targets.shareAt(worst, state), targets.greatestShareIn(state));
    }

    private boolean areEnough() {
      return leastFraction >= Verdict.JUST_SHORT_SHARE;
    }
  }

  /**
   * What flows in a network.
   *
   * @throws NoBalance if there is no balanced state
   * @throws IllegalStateException if there is no target
   */
  static GravityRun in(Network network) {
    Targets targets = Targets.of(network);
    Shares asItStands = Shares.in(network, targets);
    boolean meetsTargets =
        asItStands.areEnough() && asItStands.greatestShare() <= Verdict.TOO_MUCH_SHARE;
    Optional<Shares> throttled =
        meetsTargets
            ? Optional.empty()
            : heldToTheTargets(network, targets).filter(Shares::areEnough);
    return new GravityRun(
        asItStands,
        throttled,
        throttled.isPresent() ? MissingValves.in(asItStands.state(), targets) : List.of());
  }

  /** With each fall held to its target; empty if there is no balance then. */
  private static Optional<Shares> heldToTheTargets(Network network, Targets targets) {
    Network held = HeldToTarget.of(network, targets, targets.falls());
    try {
      return Optional.of(Shares.in(held, targets));
    } catch (NoBalance | SearchFailed drawsGoShort) {
      return Optional.empty();
    }
  }

  /** What the falls get day by day: throttled, if it meets the targets so. */
  public Shares inUse() {
    return throttled.orElse(asItStands);
  }

  /** Whether every fall gets its target, by the bounds that hold for pumps: up to 5 % short. */
  public boolean meetsTargets() {
    return inUse().areEnough();
  }

  /** Whether it does so short of the target by what one could see. */
  public boolean isJustShort() {
    return meetsTargets() && inUse().leastFraction() < Verdict.ENOUGH_SHARE;
  }
}
