package rillwright.solver.study.diagnosis.cause;

import java.util.Optional;

/**
 * A cause at a place of a job.
 *
 * @param id which and where
 * @param quantity what it changes
 * @param sizes how large it can be; empty if it is there or not
 * @param prior how likely it is before any reading
 * @param effect what it makes of the job; empty for what no cause in the list describes
 * @param mayGoUnnoticed whether it counts even where it weakens no fall
 */
public record Cause(
    CauseId id,
    Quantity quantity,
    Optional<SizeRange> sizes,
    double prior,
    Optional<Effect> effect,
    boolean mayGoUnnoticed) {

  /** Whether it is what no cause in the list describes. */
  public boolean isUnnamed() {
    return effect.isEmpty();
  }

  /** The same cause with another prior. */
  public Cause withPrior(double newPrior) {
    return new Cause(id, quantity, sizes, newPrior, effect, mayGoUnnoticed);
  }

  /** The same cause with other sizes. */
  public Cause withSizes(Optional<SizeRange> newSizes) {
    return new Cause(id, quantity, newSizes, prior, effect, mayGoUnnoticed);
  }
}
