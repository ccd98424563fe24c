package rillwright.solver.study.diagnosis.reading;

import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.Look;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/**
 * A look: what is predicted is the probability that something is seen amiss, what is read 1 if it
 * was and 0 if not. A fault that is there to be seen is seen in 95 of 100; where there is none, 97
 * of 100 say so (common practice, no source).
 *
 * @param look at what
 * @param at name of the line or point
 */
public record Sight(Look look, String at, When when) implements Measurand {
  private static final double SEEN_WHERE_NOTHING_IS = 0.03;
  private static final double SEEN_WHERE_IT_IS = 0.95;

  /** A share from which on nobody overlooks it. */
  private static final double PLAIN_TO_SEE = 0.15;

  @Override
  public OptionalDouble valueIn(Observed job) {
    double plain = Math.min(1, job.shown(look, at) / PLAIN_TO_SEE);
    return OptionalDouble.of(
        SEEN_WHERE_NOTHING_IS + plain * (SEEN_WHERE_IT_IS - SEEN_WHERE_NOTHING_IS));
  }

  /** None: it is seen or not. */
  @Override
  public Tolerance usualTolerance() {
    return Tolerance.of(1);
  }

  @Override
  public Effort effort() {
    return new Effort(
        look.minutes(),
        switch (look) {
          case NET, CHAMBER, FILTER -> Risk.OPEN_WATER;
          case PART -> Risk.OPENED;
          default -> Risk.NONE;
        });
  }

  @Override
  public Span anything(AsBuilt job, double asBuiltValue) {
    return new Span(0, 1);
  }

  @Override
  public <T> T tell(Teller<T> teller) {
    return teller.sight(this);
  }
}
