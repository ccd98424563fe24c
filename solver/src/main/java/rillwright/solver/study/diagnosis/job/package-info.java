/**
 * The job as it was built, and changes made to it. Uses {@code steady}, {@code pumping} and {@code
 * network}.
 */
package rillwright.solver.study.diagnosis.job;
