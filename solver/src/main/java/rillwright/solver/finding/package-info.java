/**
 * What the crew should know about a steady state, in plain words with what to do about it. Each
 * finding is a record with its values; each detector collects and prints nothing. Uses {@code
 * steady} and {@code network}.
 */
package rillwright.solver.finding;
