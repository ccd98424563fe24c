package rillwright.solver.study.diagnosis.cause;

import java.util.Optional;
import java.util.OptionalInt;
import rillwright.solver.study.diagnosis.job.PartPlace;

/**
 * A cause at a place.
 *
 * @param cause its name
 * @param at name of the line or point at which it sits; empty if it has no place
 * @param part its part's place in the line, counted from 1; empty if it sits at no part
 */
public record CauseId(String cause, Optional<String> at, OptionalInt part) {

  /** Without a place. */
  public static CauseId anywhere(String cause) {
    return new CauseId(cause, Optional.empty(), OptionalInt.empty());
  }

  /** At a point, or somewhere along a line. */
  public static CauseId at(String cause, String place) {
    return new CauseId(cause, Optional.of(place), OptionalInt.empty());
  }

  /** At a part. */
  public static CauseId at(String cause, PartPlace place) {
    return new CauseId(cause, Optional.of(place.line().value()), OptionalInt.of(place.index() + 1));
  }
}
