package rillwright.solver.study.diagnosis.cause;

/**
 * A place at which a cause can sit.
 *
 * @param id the cause there
 * @param effect what it makes of the job
 * @param chances how many times as likely as at a usual place
 */
public record Site(CauseId id, Effect effect, double chances) {
  /** A usual place. */
  public Site(CauseId id, Effect effect) {
    this(id, effect, 1);
  }
}
