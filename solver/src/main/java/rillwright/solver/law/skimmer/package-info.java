/** The weir in a skimmer's mouth, drowned by the water behind it. */
package rillwright.solver.law.skimmer;
