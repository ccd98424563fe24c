/**
 * What records ask of their own values, whoever makes them. Uses nothing; everything may use it.
 */
package rillwright.solver.invariant;
