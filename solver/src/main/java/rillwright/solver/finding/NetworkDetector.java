package rillwright.solver.finding;

import java.util.List;
import rillwright.solver.network.Network;

/** Looks for one kind of trouble in what a network says, before anything flows. */
interface NetworkDetector {

  /** What it finds, in the order of the network; empty if all is well. */
  List<Finding> findIn(Network network);
}
