package rillwright.solver.law;

/** Standard gravity. */
public final class Gravity {
  /**
   * Standard acceleration of gravity, m/s².
   *
   * <p>Source: 3rd General Conference on Weights and Measures (1901), Declaration on the unit of
   * mass and on the definition of weight.
   */
  public static final double STANDARD_M_PER_S2 = 9.80665;

  private Gravity() {}
}
