package rillwright.solver.balance;

import rillwright.solver.law.HeadLaw;

/**
 * Laws carried on, steeply, beyond the flows that they allow, so that Newton's method may stray
 * there and find which links are held at a bound. The final answer has no flow beyond a bound.
 */
final class ExtendedLaw {
  /**
   * Bounds of a slope in the matrix, s/m²; laws with slope 0 or infinite at no flow stay as they
   * are.
   */
  private static final double LEAST_SLOPE = 1e-5;

  private static final double GREATEST_SLOPE = 1e18;

  private ExtendedLaw() {}

  static double headLoss(Arrangement net, int link, double flow, double steepness) {
    HeadLaw law = net.law[link];
    if (flow < net.least[link]) {
      return law.headLossAt(net.least[link]) + steepness * (flow - net.least[link]);
    }
    if (flow > net.greatest[link]) {
      return law.headLossAt(net.greatest[link]) + steepness * (flow - net.greatest[link]);
    }
    return law.headLossAt(flow);
  }

  /** Slope for the matrix. */
  static double slope(Arrangement net, int link, double flow, double steepness) {
    if (flow < net.least[link] || flow > net.greatest[link]) {
      return steepness;
    }
    return bounded(net.law[link].slopeAt(flow));
  }

  /** A slope as the matrix takes it. */
  static double bounded(double slope) {
    return Math.min(GREATEST_SLOPE, Math.max(LEAST_SLOPE, slope));
  }
}
