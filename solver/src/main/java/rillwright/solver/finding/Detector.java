package rillwright.solver.finding;

import java.util.List;
import rillwright.solver.steady.SteadyState;

/** Looks for one kind of trouble in a steady state. */
interface Detector {

  /** What it finds, in the order of the network; empty if all is well. */
  List<Finding> findIn(SteadyState state);
}
