/**
 * The steady state of a network: its balance in the words of the network, with starved chambers,
 * dry falls and heads that nothing determines. Uses {@code network} and {@code balance}.
 */
package rillwright.solver.steady;
