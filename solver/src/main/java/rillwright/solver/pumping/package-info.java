/**
 * What a network asks of the pump at one place of it: the head that everything else needs at an
 * imposed flow. Uses {@code steady} and {@code network}; the studies and the system curve stand on
 * it.
 */
package rillwright.solver.pumping;
