/**
 * How far to close each valve so that every fall gets the same share of its target. Uses {@code
 * steady} and {@code network}.
 *
 * <p>A valve that is to be set is first taken for one that lets no more than its flow through; the
 * balance then says what head it has to take, and that is its loss coefficient.
 */
package rillwright.solver.study.valvesetting;
