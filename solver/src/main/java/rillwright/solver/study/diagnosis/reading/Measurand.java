package rillwright.solver.study.diagnosis.reading;

import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/**
 * Something that can be read at a job, in one of its states. Two are equal if they are the same
 * thing in the same state.
 */
public interface Measurand {

  /** The state of the job in which it is read. */
  When when();

  /** What is read, SI; empty where there is nothing to read. */
  OptionalDouble valueIn(Observed job);

  /** How closely it is read unless somebody says otherwise; common practice, no source. */
  Tolerance usualTolerance();

  /** What it takes to read it. */
  Effort effort();

  /** Where anything that might be read lies if no cause in the list is at work. */
  Span anything(AsBuilt job, double asBuiltValue);

  /**
   * Where it is nothing, in its unit: a share of an error is counted from there. The open water's
   * level for levels, 0 for all others.
   */
  default double zero(AsBuilt job) {
    return 0;
  }

  /** What kind of thing it is, its place and the state of the job. */
  <T> T tell(Teller<T> teller);

  /** Distinguishes one kind of readable from another. */
  interface Teller<T> {
    T flow(Measurands.Flow flow);

    T crestHead(Measurands.CrestHead head);

    T brink(Measurands.Brink brink);

    T teePressure(Measurands.TeePressure pressure);

    T gaugePressure(Measurands.GaugePressure pressure);

    T level(Measurands.Level level);

    T power(Measurands.Power power);

    T lineFlow(LineFlow flow);

    T drawdown(Drawdown drawdown);

    T levelBelow(LevelBelow level);

    T sight(Sight sight);

    T meter(Meter meter);
  }
}
