package rillwright.solver.study.pipechoice;

import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.Wishes;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.trial.Verdict;

/**
 * Water that runs of itself, the valves as they stand.
 *
 * @param state what flows where
 * @param worst the fall that gets the least share of its wish
 * @param worstShare that share
 * @param greatestShare the greatest share that any gets
 */
public record GravityRun(
    SteadyState state, PointName worst, double worstShare, double greatestShare) {

  /**
   * What flows in a network.
   *
   * @throws rillwright.solver.steady.NoBalance if there is no balanced state
   * @throws IllegalStateException if nothing is wished
   */
  static GravityRun in(Network network) {
    SteadyState state = SteadyStateFinder.find(network);
    Wishes wishes = Wishes.of(network);
    PointName worst = wishes.worstIn(state);
    return new GravityRun(
        state, worst, wishes.shareAt(worst, state), wishes.greatestShareIn(state));
  }

  /** Whether every fall gets its wish, by the bounds that hold for pumps: up to 5 % short. */
  public boolean does() {
    return worstShare >= Verdict.JUST_SHORT_SHARE;
  }

  /** Whether it does so short of the wish by what one could see. */
  public boolean isJustShort() {
    return does() && worstShare < Verdict.ENOUGH_SHARE;
  }

  /** Whether some fall gets so much more than its wish that it should be throttled. */
  public boolean isFarTooMuch() {
    return greatestShare > Verdict.TOO_MUCH_SHARE;
  }
}
