package rillwright.solver.study.pipechoice;

import java.util.OptionalDouble;

/** Costs as they are compared: such as differ by less than a cent do not differ. */
final class WholeCents {
  private static final double CENTS = 100;

  private WholeCents() {}

  /** A cost in whole cents; infinite if it is not known. */
  static double of(OptionalDouble cost) {
    return Math.rint(CENTS * cost.orElse(Double.POSITIVE_INFINITY));
  }
}
