package rillwright.solver.study.diagnosis.reading;

import java.util.OptionalDouble;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/**
 * How far a chamber's level lies below that of a basin, as both stand, m: a tape from one to the
 * other.
 */
public record LevelBelow(PointName chamber, PointName basin, When when) implements Measurand {
  @Override
  public OptionalDouble valueIn(Observed job) {
    OptionalDouble level = job.levelM(chamber);
    OptionalDouble above = job.levelM(basin);
    return level.isPresent() && above.isPresent()
        ? OptionalDouble.of(above.getAsDouble() - level.getAsDouble())
        : OptionalDouble.empty();
  }

  @Override
  public Tolerance usualTolerance() {
    return Tolerance.LEVEL;
  }

  @Override
  public Effort effort() {
    return new Effort(3, Risk.OPEN_WATER);
  }

  private double intakeM(AsBuilt job) {
    return ((Chamber) job.network().point(chamber)).intakeM();
  }

  @Override
  public Span anything(AsBuilt job, double asBuiltValue) {
    double depth = ((Basin) job.network().point(basin)).levelM() - intakeM(job);
    return Span.between(0, Math.max(depth, asBuiltValue));
  }

  @Override
  public <T> T tell(Teller<T> teller) {
    return teller.levelBelow(this);
  }
}
