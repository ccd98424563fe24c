package rillwright.solver.network;

import rillwright.solver.invariant.Require;

/**
 * What the end of a line costs on the velocity head of its pipe.
 *
 * @param kEntering K while water enters the line here, 0 or more
 * @param kLeaving K while water leaves the line here, 0 or more
 */
public record EndLoss(double kEntering, double kLeaving) {
  /** Costs nothing. */
  public static final EndLoss NONE = new EndLoss(0, 0);

  /**
   * A pipe's end in open water: 0.5 in, 1 out.
   *
   * <p>Source: Rishel, J. B. et al. (2006), HVAC Pump Handbook, 2nd ed., Table 3.11: square-edged
   * inlet 0.50; the velocity head is lost at an exit.
   */
  public static final EndLoss OPEN_WATER = new EndLoss(0.5, 1);

  /** A pipe's end in air: the velocity head of the jet is lost. */
  public static final EndLoss JET = new EndLoss(0, 1);

  public EndLoss {
    Require.atLeast("loss coefficient of an end while water enters", kEntering, 0, "");
    Require.atLeast("loss coefficient of an end while water leaves", kLeaving, 0, "");
  }

  /** The same K whichever way the water runs. */
  public static EndLoss bothWays(double k) {
    return new EndLoss(k, k);
  }
}
