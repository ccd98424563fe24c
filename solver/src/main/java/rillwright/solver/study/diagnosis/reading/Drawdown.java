package rillwright.solver.study.diagnosis.reading;

import java.util.OptionalDouble;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/**
 * Flow out of a chamber, m³/s, by how fast its level drops while for some seconds nothing is let
 * in. The flow is taken as it was before: a drop of 40 mm is little beside a pump's head.
 */
public record Drawdown(PointName chamber, When when) implements Measurand {
  @Override
  public OptionalDouble valueIn(Observed job) {
    return OptionalDouble.of(job.flowOutOfM3PerS(chamber));
  }

  @Override
  public Tolerance usualTolerance() {
    return Tolerance.ofShare(0.1);
  }

  @Override
  public Effort effort() {
    return new Effort(5, Risk.HELD_SHUT);
  }

  @Override
  public Span anything(AsBuilt job, double asBuiltValue) {
    return Span.between(0, Measurands.ROOM_AT_FALLS * asBuiltValue);
  }

  @Override
  public <T> T tell(Teller<T> teller) {
    return teller.drawdown(this);
  }
}
