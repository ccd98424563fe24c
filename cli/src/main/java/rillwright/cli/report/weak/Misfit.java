package rillwright.cli.report.weak;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.reading.Possible;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Span;

/** Readings that do not fit: not the likeliest cause, or nothing at all. */
public final class Misfit {
  private final WeakAnswer answer;
  private final Possible possible;

  /** The misfits of an answer. */
  public Misfit(WeakAnswer answer) {
    this.answer = answer;
    this.possible = new Possible(answer.scope().job().network());
  }

  /** The bound of what the job can make that a reading goes beyond; empty if it is within. */
  public OptionalDouble boundPassed(Reading reading) {
    Span span = reading.what().tell(possible);
    Scope scope = answer.scope();
    if (reading.value() > span.greatest() && !scope.fits(reading, span.greatest())) {
      return OptionalDouble.of(span.greatest());
    }
    if (reading.value() < span.least() && !scope.fits(reading, span.least())) {
      return OptionalDouble.of(span.least());
    }
    return OptionalDouble.empty();
  }

  /**
   * The reading that fits least by the likeliest named cause.
   *
   * @param reading what was read
   * @param by the cause
   * @param predictedByIt what would have been read
   */
  public record Least(Reading reading, Lettered by, double predictedByIt) {}

  /** What fits least; empty if nothing that tells anything was read. */
  public Optional<Least> least() {
    return Lettered.listNamed(answer).stream().findFirst().flatMap(this::leastBy);
  }

  private Optional<Least> leastBy(Lettered cause) {
    Optional<Least> least = Optional.empty();
    double most = 0;
    List<Reading> readings = answer.diagnosis().readings();
    for (int i = 0; i < readings.size(); i++) {
      OptionalDouble predicted = cause.explanation().predicted().get(i);
      if (predicted.isPresent()) {
        double value = predicted.getAsDouble();
        double off = Math.abs(answer.scope().misfit(readings.get(i), value));
        if (off > most) {
          most = off;
          least = Optional.of(new Least(readings.get(i), cause, value));
        }
      }
    }
    return least;
  }
}
