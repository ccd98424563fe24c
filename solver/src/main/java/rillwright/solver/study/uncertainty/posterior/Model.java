package rillwright.solver.study.uncertainty.posterior;

import java.util.Optional;

/** What comes of given values. Several threads may ask at a time. */
public interface Model {

  /**
   * What would be read, in the order of the evidence, and after it whatever else is asked for; NaN
   * where there is nothing to read.
   *
   * @param values of the unknowns, in their order
   * @return empty if these values are impossible
   */
  Optional<double[]> with(double[] values);
}
