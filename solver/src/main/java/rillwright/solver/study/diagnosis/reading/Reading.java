package rillwright.solver.study.diagnosis.reading;

/**
 * Something that was read.
 *
 * @param what which
 * @param value what it showed, SI
 * @param tolerance how closely
 */
public record Reading(Measurand what, double value, Tolerance tolerance) {}
