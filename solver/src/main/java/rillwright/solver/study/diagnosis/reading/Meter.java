package rillwright.solver.study.diagnosis.reading;

import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/**
 * What is read by other means than gauge, bucket and ruler.
 *
 * @param kind what
 * @param at name of the line or point
 */
public record Meter(Kind kind, String at, When when) implements Measurand {

  /** What is read; usual errors are common practice, no source. */
  public enum Kind {
    /** How far the handle of a line's last valve stands from open, degrees. */
    HANDLE(Tolerance.of(5), new Effort(1, Risk.NONE)),
    /** How far the water between a skimmer's mouth and its net is below the pond, m. */
    MOUTH(Tolerance.of(0.013), new Effort(2, Risk.OPEN_WATER)),
    /** Voltage at a running pump, V. */
    VOLTS(Tolerance.ofShare(0.02), new Effort(5, Risk.ELECTRICITY)),
    /** Flow at the box of a fall, before anything is lost on its way, m³/s. */
    BOX(Tolerance.ofShare(0.07), new Effort(15, Risk.NONE)),
    /** By how much a pond falls in a time, m/s. */
    FALLS(Tolerance.of(0.001 / 3600), new Effort(60, Risk.NONE));

    private final Tolerance tolerance;
    private final Effort effort;

    Kind(Tolerance tolerance, Effort effort) {
      this.tolerance = tolerance;
      this.effort = effort;
    }
  }

  @Override
  public OptionalDouble valueIn(Observed job) {
    return switch (kind) {
      case HANDLE -> job.handleDegrees(at);
      case MOUTH -> job.behindMouthM(at);
      case VOLTS -> job.volts(at);
      case BOX -> job.boxM3PerS(at);
      case FALLS -> job.fallsMPerS(at);
    };
  }

  @Override
  public Tolerance usualTolerance() {
    return kind.tolerance;
  }

  @Override
  public Effort effort() {
    return kind.effort;
  }

  @Override
  public Span anything(AsBuilt job, double asBuiltValue) {
    return switch (kind) {
      case HANDLE -> new Span(0, 90);
      case MOUTH -> new Span(0, 0.3);
      case VOLTS -> Span.between(0.6 * asBuiltValue, 1.1 * asBuiltValue);
      case BOX -> Span.between(0, Measurands.ROOM_AT_FALLS * asBuiltValue);
      case FALLS -> new Span(0, 0.05 / 3600);
    };
  }

  @Override
  public <T> T tell(Teller<T> teller) {
    return teller.meter(this);
  }
}
