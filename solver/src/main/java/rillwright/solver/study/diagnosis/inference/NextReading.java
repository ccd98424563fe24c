package rillwright.solver.study.diagnosis.inference;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.reading.Measurand;

/**
 * A reading that is still to be taken.
 *
 * @param what which
 * @param bits what it tells about the cause, to be expected
 * @param predicted what it would be by each cause, most likely cause first
 * @param byPairs what it would be by each pair of the diagnosis, in their order
 */
public record NextReading(
    Measurand what, double bits, List<Expected> predicted, List<OptionalDouble> byPairs) {
  public NextReading {
    predicted = List.copyOf(predicted);
    byPairs = List.copyOf(byPairs);
  }

  /** What it tells for each minute of work. */
  public double bitsPerMinute() {
    return bits / what.effort().minutes();
  }

  /** What a reading would be by a cause; empty where it tells nothing. */
  public record Expected(Cause cause, OptionalDouble value) {}
}
