package rillwright.solver.study.diagnosis.cause;

/**
 * A place at which a cause can sit.
 *
 * @param id the cause there
 * @param effect what it makes of the job
 */
public record Site(CauseId id, Effect effect) {}
