/**
 * A pump tried in a network: where it runs, whether it gives the falls their targets, what it
 * costs. Trying ({@link rillwright.solver.trial.PumpTrials}) knows nothing of ranking. Uses {@code
 * pumping}, {@code finding} and what lies below them; the studies that choose stand on it.
 */
package rillwright.solver.trial;
