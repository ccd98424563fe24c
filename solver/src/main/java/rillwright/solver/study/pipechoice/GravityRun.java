package rillwright.solver.study.pipechoice;

import java.util.Optional;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.HeldToWish;
import rillwright.solver.pumping.Wishes;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.trial.Verdict;

/**
 * Water that runs of itself.
 *
 * @param asItStands with the valves as they stand
 * @param throttled with no fall getting more than its wish, if that is how every fall gets it
 */
public record GravityRun(Shares asItStands, Optional<Shares> throttled) {

  /**
   * What the falls get of their wishes.
   *
   * @param state what flows where
   * @param worst the fall that gets the least share of its wish
   * @param worstShare that share
   * @param greatestShare the greatest share that any gets
   */
  public record Shares(
      SteadyState state, PointName worst, double worstShare, double greatestShare) {

    static Shares in(Network network, Wishes wishes) {
      SteadyState state = SteadyStateFinder.find(network);
      PointName worst = wishes.worstIn(state);
      return new Shares(state, worst, wishes.shareAt(worst, state), wishes.greatestShareIn(state));
    }

    private boolean areEnough() {
      return worstShare >= Verdict.JUST_SHORT_SHARE;
    }
  }

  /**
   * What flows in a network.
   *
   * @throws NoBalance if there is no balanced state
   * @throws IllegalStateException if nothing is wished
   */
  static GravityRun in(Network network) {
    Wishes wishes = Wishes.of(network);
    Shares asItStands = Shares.in(network, wishes);
    boolean does = asItStands.areEnough() && asItStands.greatestShare() <= Verdict.TOO_MUCH_SHARE;
    return new GravityRun(
        asItStands,
        does ? Optional.empty() : heldToTheWishes(network, wishes).filter(Shares::areEnough));
  }

  /** With each fall held to its wish; empty if there is no balance then. */
  private static Optional<Shares> heldToTheWishes(Network network, Wishes wishes) {
    Network held = HeldToWish.of(network, wishes, wishes.falls());
    try {
      return Optional.of(Shares.in(held, wishes));
    } catch (NoBalance | SearchFailed drawsGoShort) {
      return Optional.empty();
    }
  }

  /** What the falls get day by day: throttled, if that is how it does it. */
  public Shares inUse() {
    return throttled.orElse(asItStands);
  }

  /** Whether every fall gets its wish, by the bounds that hold for pumps: up to 5 % short. */
  public boolean does() {
    return inUse().areEnough();
  }

  /** Whether it does so short of the wish by what one could see. */
  public boolean isJustShort() {
    return does() && inUse().worstShare() < Verdict.ENOUGH_SHARE;
  }
}
