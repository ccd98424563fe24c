package rillwright.solver.study.diagnosis.reading;

import java.util.OptionalDouble;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/** The kinds of things that can be read. */
public final class Measurands {
  /** No pressure at all, as a gauge shows it: the standard atmosphere at sea level, ISO 2533. */
  private static final double VACUUM_PA = -101_325;

  private static final double ROOM = 1.2;
  static final double ROOM_AT_FALLS = 1.5;

  private Measurands() {}

  /** Flow over a fall or out of an outlet, m³/s: bucket and stopwatch. */
  public record Flow(PointName point, When when) implements Measurand {
    @Override
    public OptionalDouble valueIn(Observed job) {
      return OptionalDouble.of(job.flowM3PerS(point));
    }

    @Override
    public Tolerance usualTolerance() {
      return Tolerance.FLOW;
    }

    @Override
    public Effort effort() {
      return new Effort(15, Risk.NONE);
    }

    @Override
    public Span anything(AsBuilt job, double asBuiltValue) {
      return Span.between(0, ROOM_AT_FALLS * asBuiltValue);
    }

    @Override
    public <T> T tell(Teller<T> teller) {
      return teller.flow(this);
    }
  }

  /** Head over a fall's crest, m: a ruler upstream of it. */
  public record CrestHead(PointName fall, When when) implements Measurand {
    @Override
    public OptionalDouble valueIn(Observed job) {
      return OptionalDouble.of(job.crestHeadM(fall));
    }

    @Override
    public Tolerance usualTolerance() {
      return Tolerance.RULER;
    }

    @Override
    public Effort effort() {
      return new Effort(5, Risk.OPEN_WATER);
    }

    @Override
    public Span anything(AsBuilt job, double asBuiltValue) {
      return Span.between(0, ROOM_AT_FALLS * asBuiltValue);
    }

    @Override
    public <T> T tell(Teller<T> teller) {
      return teller.crestHead(this);
    }
  }

  /** Depth at a fall's brink, m: a ruler there. */
  public record Brink(PointName fall, When when) implements Measurand {
    @Override
    public OptionalDouble valueIn(Observed job) {
      return job.brinkDepthM(fall);
    }

    @Override
    public Tolerance usualTolerance() {
      return Tolerance.RULER;
    }

    @Override
    public Effort effort() {
      return new Effort(5, Risk.OPEN_WATER);
    }

    @Override
    public Span anything(AsBuilt job, double asBuiltValue) {
      return Span.between(0, ROOM_AT_FALLS * asBuiltValue);
    }

    @Override
    public <T> T tell(Teller<T> teller) {
      return teller.brink(this);
    }
  }

  /** Pressure in a tee, Pa. */
  public record TeePressure(PointName tee, When when) implements Measurand {
    @Override
    public OptionalDouble valueIn(Observed job) {
      return notBelowVacuum(job.pressurePa(tee));
    }

    @Override
    public Tolerance usualTolerance() {
      return Tolerance.GAUGE;
    }

    @Override
    public Effort effort() {
      return new Effort(30, Risk.NONE);
    }

    @Override
    public Span anything(AsBuilt job, double asBuiltValue) {
      return upToShutOff(job);
    }

    @Override
    public <T> T tell(Teller<T> teller) {
      return teller.teePressure(this);
    }
  }

  /** Pressure at a gauge, Pa. */
  public record GaugePressure(String gauge, When when) implements Measurand {
    @Override
    public OptionalDouble valueIn(Observed job) {
      return notBelowVacuum(job.gaugePa(gauge));
    }

    @Override
    public Tolerance usualTolerance() {
      return Tolerance.GAUGE;
    }

    @Override
    public Effort effort() {
      return when.gaugeEffort();
    }

    @Override
    public Span anything(AsBuilt job, double asBuiltValue) {
      return upToShutOff(job);
    }

    @Override
    public <T> T tell(Teller<T> teller) {
      return teller.gaugePressure(this);
    }
  }

  /** No gauge reads less than a vacuum, whatever a leak of a fixed flow would take to be drawn. */
  private static OptionalDouble notBelowVacuum(OptionalDouble pressurePa) {
    return pressurePa.isPresent()
        ? OptionalDouble.of(Math.max(VACUUM_PA, pressurePa.getAsDouble()))
        : pressurePa;
  }

  private static Span upToShutOff(AsBuilt job) {
    double weight = job.network().water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2;
    return Span.between(0, ROOM * weight * job.shutOffHeadM());
  }

  /** Level of a chamber or basin, m. */
  public record Level(PointName point, When when) implements Measurand {
    @Override
    public OptionalDouble valueIn(Observed job) {
      return job.levelM(point);
    }

    @Override
    public Tolerance usualTolerance() {
      return Tolerance.LEVEL;
    }

    @Override
    public Effort effort() {
      return new Effort(3, Risk.OPEN_WATER);
    }

    /** From the lowest intake to the highest open water. */
    @Override
    public Span anything(AsBuilt job, double asBuiltValue) {
      double intake =
          job.network().points(Chamber.class).stream()
              .mapToDouble(Chamber::intakeM)
              .min()
              .orElse(asBuiltValue - 0.3);
      return Span.between(Math.min(intake, asBuiltValue), Math.max(zero(job), asBuiltValue));
    }

    @Override
    public double zero(AsBuilt job) {
      return job.network().points(Basin.class).stream()
          .map(Point::heldHeadM)
          .mapToDouble(OptionalDouble::getAsDouble)
          .max()
          .orElse(0);
    }

    @Override
    public <T> T tell(Teller<T> teller) {
      return teller.level(this);
    }
  }

  /** Electrical power of a line's pump, W. */
  public record Power(LineName line, When when) implements Measurand {
    @Override
    public OptionalDouble valueIn(Observed job) {
      return job.powerW(line);
    }

    @Override
    public Tolerance usualTolerance() {
      return Tolerance.POWER;
    }

    @Override
    public Effort effort() {
      return new Effort(5, Risk.ELECTRICITY);
    }

    @Override
    public Span anything(AsBuilt job, double asBuiltValue) {
      double largest = asBuiltValue;
      for (Placed<Pump> pump : job.network().line(line).placed(Pump.class)) {
        largest = Math.max(largest, pump.part().set().publishedLargestPowerW().orElse(0));
      }
      return Span.between(0, ROOM * largest);
    }

    @Override
    public <T> T tell(Teller<T> teller) {
      return teller.power(this);
    }
  }
}
