/**
 * Which pipe goes into the trench: every size with its own cheapest pump, ranked by what pipe, pump
 * and electricity cost over the years. Uses {@code trial}.
 */
package rillwright.solver.study.pipechoice;
