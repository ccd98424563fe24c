/** The network, the head laws, the balance and the studies: pure computation, SI throughout. */
package rillwright.solver;
