package rillwright.solver.study.diagnosis.reading;

import java.util.OptionalDouble;
import rillwright.solver.network.LineName;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/** Flow in a line at its beginning, m³/s: a meter clamped on its pipe. Positive along the line. */
public record LineFlow(LineName line, When when) implements Measurand {
  @Override
  public OptionalDouble valueIn(Observed job) {
    return OptionalDouble.of(job.lineFlowM3PerS(line));
  }

  @Override
  public Tolerance usualTolerance() {
    return Tolerance.ofShare(0.05);
  }

  @Override
  public Effort effort() {
    return new Effort(10, Risk.METER_PLACE);
  }

  @Override
  public Span anything(AsBuilt job, double asBuiltValue) {
    return Span.between(0, Measurands.ROOM_AT_FALLS * asBuiltValue);
  }

  @Override
  public <T> T tell(Teller<T> teller) {
    return teller.lineFlow(this);
  }
}
