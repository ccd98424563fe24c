/** Curves through published points that rise or fall only where the points do. */
package rillwright.solver.law.curve;
