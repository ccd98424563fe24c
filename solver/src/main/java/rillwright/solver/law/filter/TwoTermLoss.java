package rillwright.solver.law.filter;

import rillwright.solver.law.HeadLaw;

/**
 * Loss of a filter, h = a Q + b Q|Q|: creeping flow through the medium and turbulent flow through
 * the ports.
 *
 * <p>Source: Forchheimer, P. (1901), "Wasserbewegung durch Boden", Zeitschrift des Vereines
 * Deutscher Ingenieure 45 (from memory).
 *
 * @param linear a, s/m², 0 or more
 * @param quadratic b, s²/m⁵, 0 or more; a and b are not both 0
 */
public record TwoTermLoss(double linear, double quadratic) implements HeadLaw {
  public TwoTermLoss {
    boolean valid = linear >= 0 && quadratic >= 0 && linear + quadratic > 0;
    if (!valid || Double.isInfinite(linear + quadratic)) {
      throw new IllegalArgumentException(
          "a filter's two terms are "
              + linear
              + " and "
              + quadratic
              + "; they must be 0 or more, not both 0");
    }
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return flowM3PerS * (linear + quadratic * Math.abs(flowM3PerS));
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return linear + 2 * quadratic * Math.abs(flowM3PerS);
  }
}
