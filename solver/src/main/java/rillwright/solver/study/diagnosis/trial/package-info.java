/**
 * The inference tried on simulated calls: faults drawn from the table of causes, what would be read
 * with its errors, and how good the answers were. Uses {@code inference}.
 */
package rillwright.solver.study.diagnosis.trial;
