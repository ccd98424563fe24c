/** The weir in a skimmer's mouth, drowned by the water downstream of it. */
package rillwright.solver.law.skimmer;
