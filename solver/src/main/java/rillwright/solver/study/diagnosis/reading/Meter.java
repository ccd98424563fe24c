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
    HANDLE(5, 0, 1, Risk.NONE),
    /** How far the water between a skimmer's mouth and its net is below the pond, m. */
    MOUTH(0.013, 0, 2, Risk.OPEN_WATER),
    /** Voltage at a running pump, V. */
    VOLTS(0, 0.02, 5, Risk.ELECTRICITY),
    /** Flow at the box of a fall, before anything is lost on its way, m³/s. */
    BOX(0, 0.07, 15, Risk.NONE),
    /** By how much a pond falls in a time, m/s. */
    FALLS(0.001 / 3600, 0, 60, Risk.NONE);

    private final double absolute;
    private final double share;
    private final int minutes;
    private final Risk risk;

    Kind(double absolute, double share, int minutes, Risk risk) {
      this.absolute = absolute;
      this.share = share;
      this.minutes = minutes;
      this.risk = risk;
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
    return new Tolerance(kind.absolute, kind.share);
  }

  @Override
  public Effort effort() {
    return new Effort(kind.minutes, kind.risk);
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
