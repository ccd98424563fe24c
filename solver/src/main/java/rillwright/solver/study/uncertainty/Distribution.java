package rillwright.solver.study.uncertainty;

/** What is known of a quantity that is not known exactly. */
public interface Distribution {

  /**
   * The value below which the quantity lies with a given chance.
   *
   * @param chance above 0 and below 1
   */
  double quantile(double chance);
}
