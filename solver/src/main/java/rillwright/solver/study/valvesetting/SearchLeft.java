package rillwright.solver.study.valvesetting;

import rillwright.solver.network.Network;
import rillwright.solver.steady.SteadyState;

/**
 * How much may still be searched, so that a large job ends: so much for any job and so much for
 * each of its lines, in Newton steps times lines. Once it is spent every search stands where it is.
 */
final class SearchLeft {
  private static final double ANYWAY = 400_000;
  private static final double A_LINE = 5_000;

  /** Steps that a balance that is not found counts as: many, though how many it took is unknown. */
  private static final int STEPS_IN_VAIN = 40;

  private double left;
  private boolean wasCutShort;

  SearchLeft(Network network) {
    this(ANYWAY + A_LINE * network.lines().size());
  }

  /** So many Newton steps times lines. */
  SearchLeft(double most) {
    this.left = most;
  }

  /** Counts what a state took. */
  void spend(SteadyState state) {
    left -= (double) state.iterations() * state.network().lines().size();
  }

  /** Counts a balance that was not found. */
  void spendInVain(Network network) {
    left -= (double) STEPS_IN_VAIN * network.lines().size();
  }

  /** Whether to stand where one is; then the search is cut short. */
  boolean isSpent() {
    wasCutShort |= left <= 0;
    return left <= 0;
  }

  /** Whether a search was cut short. */
  boolean wasCutShort() {
    return wasCutShort;
  }
}
