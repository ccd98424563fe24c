/**
 * What no change of a kind can exceed: the flow of a fall where all that such a change could take
 * off its way is gone. Uses {@code steady} and {@code network}.
 */
package rillwright.solver.study.mending;
