/**
 * Losses on the velocity head (fittings, valves, ends of pipes, nozzles) and losses given at one
 * flow.
 */
package rillwright.solver.law.minor;
