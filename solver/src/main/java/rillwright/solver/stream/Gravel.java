package rillwright.solver.stream;

/**
 * Gravel under a reach.
 *
 * @param depthM m, 0 or more
 * @param voids share of it that is holes between stones
 * @param drains share of the water in it that drains when the pump stops
 */
public record Gravel(double depthM, double voids, double drains) {
  /** Voids where none are given; common practice, no source. */
  public static final double USUAL_VOIDS = 0.38;

  /** Share that drains where none is given; common practice, no source. */
  public static final double USUALLY_DRAINS = 0.5;

  /** No gravel. */
  public static final Gravel NONE = new Gravel(0, 0, 0);

  /** Water in it that drains, m³ for each m² of bed. */
  public double drainableM() {
    return depthM * voids * drains;
  }

  /** Water in it that stays, m³ for each m² of bed. */
  public double undrainedM() {
    return depthM * voids * (1 - drains);
  }
}
