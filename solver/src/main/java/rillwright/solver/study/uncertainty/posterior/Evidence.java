package rillwright.solver.study.uncertainty.posterior;

/** Something that was read or seen. */
public sealed interface Evidence permits Measured, Seen {

  /** By how many standard deviations it is above what is predicted. */
  double deviations(double predicted);

  /**
   * Its part in a sum that is chi-square if all fits; 0 if it has no normal error, NaN where
   * nothing is predicted.
   */
  double misfit(double predicted);

  /** Its standard deviation where something is predicted, greater than 0. */
  double deviationAt(double predicted);

  /**
   * Logarithm of its density.
   *
   * @param extraVariance of what is predicted
   */
  double logDensity(double predicted, double extraVariance);
}
