/**
 * The network as a graph: what hangs together, and whether its draws can be met. Alone in using
 * JGraphT.
 */
package rillwright.solver.network.topology;
