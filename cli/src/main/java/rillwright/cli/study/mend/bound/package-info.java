/**
 * What no change of a class can exceed. Uses {@code change}, {@code kind}, {@code site} and the
 * solver.
 */
package rillwright.cli.study.mend.bound;
