package rillwright.solver.law.channel;

/** How fast water runs over a bed. Rises with hydraulic radius and slope, from none at none. */
public sealed interface BedLaw permits Manning, StoneBed {

  /**
   * Mean velocity, m/s.
   *
   * @param hydraulicRadiusM m, 0 or more
   * @param slope of the energy line, fall over length, 0 or more
   */
  double velocityMPerS(double hydraulicRadiusM, double slope);
}
