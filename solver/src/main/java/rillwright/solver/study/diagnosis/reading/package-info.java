/**
 * What a crew can read at a job, in which state of it, how closely, and what it reads in a job with
 * changes made. Uses {@code job} and the solver's {@code reading}.
 */
package rillwright.solver.study.diagnosis.reading;
