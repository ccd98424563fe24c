/**
 * Changes put into a project, balanced and judged: alone, two together, with room for the pond.
 * Uses {@code change}, {@code kind}, {@code site} and the solver.
 */
package rillwright.cli.study.mend.trial;
