package rillwright.solver.study.uncertainty;

import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Network;

/** A network some of whose quantities are not known exactly. Several threads may ask at a time. */
public interface UncertainNetwork {

  /** What is known of the quantities, one or more. */
  List<Distribution> unknowns();

  /**
   * The network with given values.
   *
   * @param values of the unknowns, in their order and units
   * @return empty if these values contradict each other
   */
  Optional<Network> with(List<Double> values);
}
