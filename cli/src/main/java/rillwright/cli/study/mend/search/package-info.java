/**
 * The least set of changes of all lines' sizes, pumps and valves together: best first, with what
 * cannot do it left out by a bound. Uses {@code change}, {@code kind}, {@code site}, {@code trial}
 * and the solver.
 */
package rillwright.cli.study.mend.search;
