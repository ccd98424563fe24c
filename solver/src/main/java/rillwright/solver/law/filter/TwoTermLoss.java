package rillwright.solver.law.filter;

import rillwright.solver.invariant.Require;
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
    Require.atLeast("linear term", linear, 0, "s/m²");
    Require.atLeast("quadratic term", quadratic, 0, "s²/m⁵");
    Require.positive("sum of the linear and the quadratic term", linear + quadratic, "");
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
