package rillwright.solver.study.diagnosis.trial;

import java.util.List;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;

/**
 * A call to a weak fall, with what is really wrong.
 *
 * @param truth what is wrong
 * @param size how large it is; of no account without sizes
 * @param readings what was read
 * @param other what could still be read, as it would be read, in a random order
 */
public record SimulatedCall(Cause truth, double size, List<Reading> readings, List<Reading> other) {
  public SimulatedCall {
    readings = List.copyOf(readings);
    other = List.copyOf(other);
  }

  /** What would be read of a readable that was not read yet; throws if it cannot be read. */
  Reading readingOf(Measurand readable) {
    return other.stream().filter(r -> r.what().equals(readable)).findFirst().orElseThrow();
  }

  /** What could still be measured, looks left out. */
  List<Reading> measured() {
    return other.stream()
        .filter(it -> !(it.what() instanceof Sight || it.what() instanceof Meter))
        .toList();
  }

  boolean canRead(Measurand readable) {
    return other.stream().anyMatch(reading -> reading.what().equals(readable));
  }
}
