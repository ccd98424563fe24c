package rillwright.solver.study.diagnosis.evidence;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.Span;

/** What no cause in the list describes: every reading may be anything within reason. */
public record AnyReading(Cause cause, Scope scope) implements Hypothesis {

  private static final double SEEN_OR_NOT = 0.5;

  @Override
  public Belief given(Likelihood likelihood) {
    double log = 0;
    for (Reading reading : likelihood.readings()) {
      log += Math.log(density(reading));
    }
    return new Anything(scope, log);
  }

  /** Even over the span, blurred by the error of reading. */
  private double density(Reading reading) {
    if (reading.what() instanceof Sight) {
      return SEEN_OR_NOT;
    }
    int index = scope.indexOf(reading.what());
    double deviation = scope.deviation(index, reading.value(), reading.tolerance());
    Span span = widened(span(scope, index), deviation);
    double above = StudentT.below((reading.value() - span.least()) / deviation);
    double below = StudentT.below((reading.value() - span.greatest()) / deviation);
    return Math.max(above - below, 1e-6) / span.width();
  }

  /** A span that is narrower than the error says no more than that. */
  private static Span widened(Span span, double deviation) {
    double missing = Math.max(0, 2 * deviation - span.width());
    return new Span(span.least() - missing / 2, span.greatest() + missing / 2);
  }

  private static Span span(Scope scope, int index) {
    double asBuilt = scope.asBuilt(index);
    return scope.readables().get(index).anything(scope.job(), Double.isNaN(asBuilt) ? 0 : asBuilt);
  }

  private record Anything(Scope scope, double logEvidence) implements Belief {
    @Override
    public OptionalDouble size() {
      return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble mean(int readable) {
      return OptionalDouble.empty();
    }

    @Override
    public Optional<Span> span(int readable) {
      return Optional.of(AnyReading.span(scope, readable));
    }

    @Override
    public void addDensity(int readable, Grid grid) {
      Span span = AnyReading.span(scope, readable);
      grid.spreadEvenly(span.least(), span.greatest(), 1);
    }
  }
}
