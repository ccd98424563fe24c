/** Curves through published points that rise or fall only where the points do, and roots. */
package rillwright.solver.law.curve;
